import type { StudyStrikeDifference } from '../study/study-strike.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, type Matrix, paragraph, type ShadedCell } from './block.ts';
import { numberOf, partName, sayIn } from './page-context.ts';
import { captionOf, isAgainstRemote, marksOf, type StrikeView } from './strike-view.ts';

const words = strikeReportWords.matrix;
/** Names across that a sheet of paper holds. */
const mostParts = 12;
/** Fewer pairs are read sooner in the table. */
const fewestPairs = 3;
/** Where one shade ends and the next begins. Steps of size only: nothing withstands by them. */
const stepsV = [1e3, 3e3, 10e3, 30e3, 100e3];

/** Each part against each other, of those with the worst differences and those asked for; `between` falls in size. */
export function matrixBlocks(view: StrikeView, between: readonly StudyStrikeDifference[]): readonly Block[] {
  const pairs = between.filter((d) => !isAgainstRemote(d));
  const parts = partsOf(view, pairs);
  const shown = pairs.filter((d) => parts.includes(d.a) && parts.includes(d.b));
  if (shown.length < fewestPairs || parts.length < 3) return [];
  const matrix: Matrix = {
    is: 'matrix',
    id: `${view.id}-matrix`,
    caption: captionOf(view, shown.some((d) => marksOf(d) !== '') ? words.captionMarks : words.caption),
    unit: words.unit,
    head: parts.map((p) => partName(view.page, p)),
    rows: parts.map((a) => ({
      name: partName(view.page, a),
      cells: parts.map((b) => pairCell(a, b, shown)),
    })),
    legend: words.legend,
    shades: legend(view),
  };
  return [matrix, paragraph(words.empty)];
}

/** In the order of their numbers. */
function partsOf({ page }: StrikeView, pairs: readonly StudyStrikeDifference[]): readonly string[] {
  const first = [...pairs.filter((d) => d.why === 'asked'), ...pairs];
  const chosen: string[] = [];
  for (const { a, b } of first) {
    const added = [a, b].filter((p) => !chosen.includes(p));
    if (chosen.length + added.length <= mostParts) chosen.push(...added);
  }
  const place = (id: string) => Number.parseInt(numberOf(page, id), 10) || Infinity;
  return chosen.sort((x, y) => (place(x) === place(y) ? (x < y ? -1 : 1) : place(x) - place(y)));
}

/** Of a pair that stands twice the greater. */
function pairCell(a: string, b: string, pairs: readonly StudyStrikeDifference[]): ShadedCell {
  if (a === b) return { text: '', shade: '' };
  const found = pairs.find((d) => (d.a === a && d.b === b) || (d.a === b && d.b === a));
  if (found === undefined) return { text: '–', shade: '' };
  return { text: `${kilovoltOf(found.peakV)}${marksOf(found)}`, shade: String(shadeOf(found.peakV)) };
}

/** What a person would not feel is no figure. */
const leastV = 10;

function kilovoltOf(peakV: number): string {
  return peakV < leastV ? `<${leastV / 1e3}` : String(Number((peakV / 1e3).toPrecision(3)));
}

function shadeOf(peakV: number): number {
  return stepsV.filter((step) => peakV >= step).length;
}

function legend({ page }: StrikeView): readonly ShadedCell[] {
  const kilovolt = stepsV.map((s) => String(s / 1e3));
  return Array.from({ length: stepsV.length + 1 }, (_, i) => {
    const [from, to] = [kilovolt[i - 1], kilovolt[i]];
    const template = from === undefined ? words.under : to === undefined ? words.over : words.step;
    return { text: sayIn(page, template, { from: from ?? '', to: to ?? '' }), shade: String(i) };
  });
}
