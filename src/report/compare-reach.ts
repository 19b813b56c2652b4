import type { ReachRow, ReachWay } from '../compare/comparison.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { cell, listCell, paragraph, row, type Section, tableIfAny } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { bothNames, sameNote } from './compare-figures.ts';
import { type PageContext, partName, sayIn } from './page-context.ts';

const words = compareReportWords.reach;

/** What still reaches each box: on each side all of it, with a sign at what only that side has. */
export function compareReachSection(page: CompareContext): Section {
  const all = page.comparison.reach;
  const differing = all.filter((r) => r.standing !== 'same');
  const table = tableIfAny({
    id: 'reach-compare',
    caption: words.caption,
    head: [words.box, page.sides.before, page.sides.after],
    rows: all.map((r) =>
      row(
        cell(bothNames(page, r.part)),
        waysCell(page.before, r.by.before, r.gone, '× '),
        waysCell(page.after, r.by.after, r.new, '+ '),
      ),
    ),
  });
  const none = differing.length === 0 && all.length > 0 ? sameNote(page, all.length) : [];
  return { id: 'reach', heading: words.heading, blocks: [paragraph(words.intro), ...none, ...table] };
}

function waysCell(page: PageContext, by: ReachRow['by']['before'], own: readonly ReachWay[], sign: string) {
  if (by.length === 0) return cell(words.nothing);
  const only = new Set(own.map((w) => JSON.stringify([w.line, w.from])));
  return listCell(
    by.map((w) =>
      sayIn(page, words.entry, {
        sign: only.has(JSON.stringify([w.line, w.from])) ? sign : '',
        line: partName(page, w.line),
        from: partName(page, w.from),
      }),
    ),
  );
}
