import type { PathRow } from '../compare/comparison.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { bothNames, sameNote } from './compare-figures.ts';
import { figure, partName, sayIn } from './page-context.ts';

const words = compareReportWords.ways;

/** The best way of each part to its electrode and to the service, where it is not what it was. */
export function compareWaysSection(page: CompareContext): Section {
  const all = page.comparison.paths;
  const differing = all.filter((p) => p.standing !== 'same');
  const table = {
    id: 'ways-table-compare',
    look: 'wide' as const,
    caption: words.caption,
    head: [words.from, page.sides.before, page.sides.after],
    rows: differing.map((p) =>
      row(
        cell(bothNames(page, p.from), sayIn(page.after, words.aim[p.aim])),
        wayCell(page, p, 'before'),
        wayCell(page, p, 'after'),
      ),
    ),
  };
  const none = differing.length === 0 ? [paragraph(compareReportWords.figures.noneDiffer)] : [];
  return {
    id: 'ways',
    heading: sayIn(page.after, words.heading),
    blocks: [...none, ...tableIfAny(table), ...sameNote(page, all.length - differing.length)],
  };
}

function wayCell(page: CompareContext, p: PathRow, side: 'before' | 'after') {
  const to = p.to[side];
  if (to === null) return cell(words.noWay);
  const own = side === 'before' ? page.before : page.after;
  const n = p.separatePaths[side];
  const values = {
    ohm: figure(page.after, p.resistanceOhm[side], 'resistance'),
    henry: figure(page.after, p.inductanceH[side], 'inductance'),
    n: n === null ? '' : String(n),
  };
  return cell(
    sayIn(page.after, words.to, { to: partName(own, to), length: figure(page.after, p.lengthM[side], 'length') }),
    sayIn(page.after, n === null ? words.figures : words.separate, values),
  );
}
