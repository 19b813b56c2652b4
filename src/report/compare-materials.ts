import type { ComparedMaterial } from '../compare/comparison.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { type Cell, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { figure, sayIn } from './page-context.ts';

const words = compareReportWords.materials;

/** Copper, rods, joints and devices that one side has and the other has not. */
export function compareMaterialsSection(page: CompareContext): Section {
  const { added, removed } = page.comparison.materials;
  const names = [...new Set([...added, ...removed].map((m) => m.name))].sort();
  const find = (list: readonly ComparedMaterial[], name: string) => list.find((m) => m.name === name);
  const table = tableIfAny({
    id: 'materials-table',
    caption: words.caption,
    head: [words.name, words.added, words.removed],
    rows: names.map((name) =>
      row(cell(name), countCell(page, find(added, name)), countCell(page, find(removed, name))),
    ),
  });
  const intro = names.length === 0 ? words.none : words.intro;
  return { id: 'materials', heading: words.heading, blocks: [paragraph(intro), ...table] };
}

function countCell(page: CompareContext, material: ComparedMaterial | undefined): Cell {
  if (material === undefined) return cell('–');
  const unknown = material.unknown === 0 ? null : sayIn(page.after, words.unknown, { n: String(material.unknown) });
  return cell(countText(page, material), unknown);
}

/** Metres in both unit systems, or how many. */
export function countText(page: CompareContext, { unit, count }: ComparedMaterial): string {
  if (unit === 'm') return figure(page.after, count, 'length');
  return count.low === count.high ? String(count.low) : `${count.low} to ${count.high}`;
}
