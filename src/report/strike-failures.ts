import { percent } from '../drawing/chart-names.ts';
import type { StudyStrikeFailure } from '../study/study-strike.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, listCell, minor, paragraph, type Row, row, tableIfAny } from './block.ts';
import { partName, partNames, sayIn } from './page-context.ts';
import { captionOf, endName, marksOf, restBlocks, type StrikeView, volt } from './strike-view.ts';

const words = strikeReportWords.failures;
const mostRows = 14;

/** What one loss changes: what then hangs on nothing first, then the greatest growth; what changes nothing in a sentence. */
export function failureBlocks(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  if (strike.failures.length === 0) return [];
  const growth = ({ worst }: StudyStrikeFailure) => (worst === null ? 0 : worst.afterV - worst.beforeV);
  const matters = strike.failures
    .filter((f) => f.separates.length > 0 || growth(f) > 0)
    .sort((x, y) => rank(x) - rank(y) || growth(y) - growth(x) || (x.lost < y.lost ? -1 : 1));
  const count = strike.failures.length - matters.length;
  const shown = matters.slice(0, mostRows);
  const isParted = shown.some((f) => f.separates.length > 0);
  return [
    minor(words.heading),
    paragraph(words.intro),
    ...tableIfAny({
      id: `${view.id}-failures`,
      caption: captionOf(view, words.caption),
      head: [words.lost, ...(isParted ? [words.separates] : []), words.pair, words.change],
      rows: shown.map((f) => failureRow(view, f, isParted)),
    }),
    ...restBlocks(view, matters.length, mostRows),
    ...(count === 0 ? [] : [paragraph(sayIn(page, words.none, { count }))]),
  ];
}

function rank({ separates }: StudyStrikeFailure): number {
  return separates.length > 0 ? 0 : 1;
}

/** `isParted`: the table has a column for what hangs on nothing. */
function failureRow(view: StrikeView, failure: StudyStrikeFailure, isParted: boolean): Row {
  const { lost, alike, separates, worst } = failure;
  const { page } = view;
  const apart = isParted ? [cell(separates.length === 0 ? '–' : partNames(page, separates))] : [];
  const series = alike.length === 0 ? null : sayIn(page, words.inSeries, { count: alike.length });
  const name = cell(partName(page, lost), series);
  if (worst === null) return row(name, ...apart, cell('–'), cell('–'));
  const marks = marksBetween(view, worst);
  const after = `${volt(worst.afterV)}${marks === '' ? '' : ` ${marks}`}`;
  const change = sayIn(page, words.fromTo, { before: volt(worst.beforeV), after });
  return row(
    name,
    ...apart,
    listCell([endName(view, worst.a), endName(view, worst.b)]),
    cell(change, growthOf(view, worst), ...gapsOf(view, failure)),
  );
}

/** Protectors that change their mind. */
function gapsOf({ page }: StrikeView, { fires = [], rests = [] }: StudyStrikeFailure): readonly string[] {
  const of = (template: string, ids: readonly string[]) =>
    ids.length === 0 ? [] : [sayIn(page, template, { list: partNames(page, ids) })];
  return [...of(words.fires, fires), ...of(words.rests, rests)];
}

/** `6.8 times`, or `4 % more` where that says it better; null where there was nothing before. */
function growthOf({ page }: StrikeView, { beforeV, afterV }: NonNullable<StudyStrikeFailure['worst']>): string | null {
  const ratio = afterV / beforeV;
  if (!Number.isFinite(ratio)) return null;
  if (ratio < 2) return sayIn(page, words.more, { more: percent(ratio - 1) });
  return sayIn(page, words.times, { times: String(Number(ratio.toPrecision(2))) });
}

/** Those that the same two bear with nothing lost. */
function marksBetween({ strike }: StrikeView, { a, b }: { readonly a: string; readonly b: string }): string {
  const same = strike.differences.find((d) => (d.a === a && d.b === b) || (d.a === b && d.b === a));
  return same === undefined ? '' : marksOf(same);
}
