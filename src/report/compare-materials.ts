import type { ComparedMaterial } from '../compare/comparison.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { compareWords } from '../words/compare-words.ts';
import { type Cell, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { type CompareContext, wordingOf } from './compare-context.ts';
import { figure, kindName, sayIn } from './page-context.ts';

const words = compareReportWords.materials;

/** Copper, rods, joints and devices that one side has and the other has not. */
export function compareMaterialsSection(page: CompareContext): Section {
  const { added, removed } = page.comparison.materials;
  const wording = wordingOf(page);
  const keyOf = (m: ComparedMaterial) => JSON.stringify([materialName(page, m), m.kind]);
  const keys = [...new Set([...added, ...removed].map(keyOf))].sort();
  const find = (list: readonly ComparedMaterial[], key: string) => list.find((m) => keyOf(m) === key);
  const table = tableIfAny({
    id: 'materials-table',
    caption: words.caption[wording],
    head: [words.name, words.added[wording], words.removed],
    rows: keys.map((key) => {
      const [inNow, out] = [find(added, key), find(removed, key)];
      return row(cell(materialName(page, (inNow ?? out)!)), countCell(page, inNow), countCell(page, out));
    }),
  });
  const intro = keys.length === 0 ? words.none : words.intro[wording];
  return { id: 'materials', heading: words.heading[wording], blocks: [paragraph(intro), ...table] };
}

function countCell(page: CompareContext, material: ComparedMaterial | undefined): Cell {
  if (material === undefined) return cell('–');
  const n = String(material.unknown);
  if (isOnlyUnknown(material)) return cell(sayIn(page.after, words.onlyUnknown, { n }));
  return cell(countText(page, material), material.unknown === 0 ? null : sayIn(page.after, words.unknown, { n }));
}

/** Nothing of it has a known length: a figure of 0 would read as none. */
export function isOnlyUnknown({ count, unknown }: ComparedMaterial): boolean {
  return unknown > 0 && count.high <= 0;
}

/** In the region's words. */
export function materialName({ after }: CompareContext, { name, kind }: ComparedMaterial): string {
  return name === 'unknown' ? sayIn(after, compareWords.unknownName[kind]) : kindName(after, name);
}

/** Metres in both unit systems, or how many. */
export function countText(page: CompareContext, { unit, count }: ComparedMaterial): string {
  if (unit === 'm') return figure(page.after, count, 'length');
  return count.low === count.high ? String(count.low) : `${count.low} to ${count.high}`;
}
