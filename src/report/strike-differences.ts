import type { StudyStrikeDifference } from '../study/study-strike.ts';
import { formatQuantity } from '../units/format.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, listCell, minor, paragraph, type Row, row, tableIfAny } from './block.ts';
import { figure, partName, sayIn } from './page-context.ts';
import { matrixBlocks } from './strike-matrix.ts';
import {
  byGreatest,
  captionOf,
  endName,
  isAgainstRemote,
  isChain,
  isEstimate,
  markedVolt,
  restBlocks,
  type StrikeView,
  time,
  volt,
} from './strike-view.ts';

const words = strikeReportWords.between;
/** Rows of the table of worst differences; those asked for by name stand in it whatever their size. */
const mostRows = 14;
/** What is next to nothing is left to the matrix. */
const leastV = 10;

/** The worst of what people and cables join, in a sentence; nothing where no two things were looked at. */
export function worstBlocks(view: StrikeView): readonly Block[] {
  const [worst] = betweenOf(view);
  return worst === undefined ? [] : [paragraph(worstSentence(view, worst))];
}

/** The worst in a table, then the matrix of pairs, then lines from outside. */
export function differenceBlocks(view: StrikeView): readonly Block[] {
  const between = betweenOf(view);
  if (between.length === 0) return outsideBlocks(view);
  const { page } = view;
  const shown = between.filter((d, i) => (i < mostRows && d.peakV >= leastV) || d.why === 'asked');
  return [
    minor(sayIn(page, words.heading)),
    ...tableIfAny({
      id: `${view.id}-differences`,
      look: 'wide',
      caption: captionOf(view, words.caption),
      head: [words.pair, words.peak, words.after, words.perKiloampere, words.perSteepness, words.why],
      rows: shown.map((d) => differenceRow(view, d)),
    }),
    ...restBlocks(view, between.length, shown.length),
    paragraph(sayIn(page, words.per)),
    ...markBlocks(view, shown),
    ...matrixBlocks(view, between),
    ...outsideBlocks(view),
  ];
}

function betweenOf({ strike }: StrikeView): readonly StudyStrikeDifference[] {
  return sorted(strike.differences.filter((d) => d.why !== 'outside'));
}

function sorted(differences: readonly StudyStrikeDifference[]): readonly StudyStrikeDifference[] {
  return byGreatest(
    differences,
    (d) => d.peakV,
    (d) => JSON.stringify([d.a, d.b, d.why]),
  );
}

function worstSentence(view: StrikeView, d: StudyStrikeDifference): string {
  const bounds = rangeOf(d);
  const range = bounds === null ? '' : sayIn(view.page, words.range, { range: bounds });
  const values = { a: endName(view, d.a), b: endName(view, d.b), peak: markedVolt(d.peakV, d), range, atS: d.atS };
  return sayIn(view.page, words.worst, { ...values, why: whyOf(view, d) });
}

function differenceRow(view: StrikeView, d: StudyStrikeDifference): Row {
  return row(
    listCell([endName(view, d.a), endName(view, d.b)]),
    cell(markedVolt(d.peakV, d), rangeOrOpen(d)),
    cell(time(d.atS)),
    cell(volt(d.voltPerKiloampere)),
    cell(volt(d.voltPerKiloamperePerMicrosecond)),
    cell(whyOf(view, d)),
  );
}

/** null: the figure does not hang on a range. */
function rangeOf({ rangeV }: StudyStrikeDifference): string | null {
  if (rangeV.high !== null && rangeV.high === rangeV.low) return null;
  return formatQuantity({ low: rangeV.low, high: rangeV.high ?? Infinity }, 'voltage', 'si');
}

function rangeOrOpen(d: StudyStrikeDifference): string | null {
  return rangeOf(d) ?? (d.rangeV.high === null ? words.open : null);
}

function whyOf({ page }: StrikeView, { why, by }: StudyStrikeDifference): string {
  const whys: Readonly<Record<string, string>> = words.whys;
  const line = by === null ? null : partName(page, by);
  if (line === null && why === 'line') return words.lineUnnamed;
  if (line === null && why === 'outside') return words.outsideUnnamed;
  const template = Object.hasOwn(whys, why) ? whys[why]! : words.whys.asked;
  const says = sayIn(page, template, { by: line });
  return line === null || template.includes('{by}') ? says : sayIn(page, words.joined, { why: says, by: line });
}

/** What the marks mean, of those that the rows bear. */
export function markBlocks({ page, strike }: StrikeView, shown: readonly StudyStrikeDifference[]): readonly Block[] {
  const marks = strikeReportWords.marks;
  const { solve } = strike;
  const lengths =
    solve === null
      ? null
      : { longestM: figure(page, solve.longestWayM, 'length'), mostM: figure(page, solve.mostWayM, 'length') };
  const beyond = lengths === null ? marks.beyondOnly : sayIn(page, marks.beyond, lengths);
  const items = [
    ...(shown.some((d) => d.isBeyond) ? [beyond] : []),
    ...(shown.some(isChain) ? [marks.chain] : []),
    ...(shown.some(isEstimate) ? [marks.estimate] : []),
    ...(shown.some(isAgainstRemote) ? [sayIn(page, marks.remote)] : []),
    ...(shown.some((d) => d.isBracketed) ? [marks.bracketed] : []),
  ];
  return items.length === 0 ? [] : [{ is: 'list', ordered: false, items }];
}

function outsideBlocks(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const outside = sorted(strike.differences.filter((d) => d.why === 'outside'));
  if (outside.length === 0) return [];
  const says = strikeReportWords.outside;
  return [
    minor(says.heading),
    paragraph(sayIn(page, says.intro)),
    ...tableIfAny({
      id: `${view.id}-outside`,
      caption: captionOf(view, says.caption),
      head: [says.line, words.pair, words.peak, words.after],
      rows: outside.map((d) =>
        row(
          cell(d.by === null ? '–' : partName(page, d.by)),
          listCell([endName(view, d.a), endName(view, d.b)]),
          cell(markedVolt(d.peakV, d), rangeOrOpen(d)),
          cell(time(d.atS)),
        ),
      ),
    }),
    ...markBlocks(view, outside),
  ];
}
