import type { StudyStrikeFailure } from '../study/study-strike.ts';
import { strikeCommandWords as words } from '../words/strike-command-words.ts';
import { bullet, headed, paragraph } from './page-blocks.ts';
import { kilo, percentOf, type StrikePage } from './strike-page.ts';
import { textTable } from './text-table.ts';

const { failures: said, headings } = words;
/** More than this is a wall of figures. */
const mostTold = 10;
/** Growth by less than this share is less than what was typed is worth. */
const leastGrowth = 0.05;

type Worst = NonNullable<StudyStrikeFailure['worst']>;
type Raising = StudyStrikeFailure & { readonly worst: Worst };

/** One failure at a time: the difference that grows most, and what is cut off. */
export function failuresBlock(page: StrikePage): string {
  const { failures } = page.strike;
  if (failures.length === 0) return '';
  const raising = raisingFailures(failures);
  const cutting = failures.filter((f) => f.separates.length > 0).sort(byLost);
  const quiet = failures.filter((f) => f.separates.length === 0 && !raising.some((r) => r.lost === f.lost)).length;
  return headed(page, headings.failures, [
    ...tableOf(page, raising.slice(0, mostTold)),
    ...moreOf(page, raising.length - mostTold),
    ...raising.slice(0, mostTold).flatMap((failure) => gapsOf(page, failure)),
    ...cutting
      .slice(0, mostTold)
      .map(({ lost, separates: list }) => bullet(page, page.sentence(said.separates, { lost, list }))),
    ...moreOf(page, cutting.length - mostTold),
    ...quietOf(page, quiet),
  ]);
}

/** Those that raise a difference by what is worth a line, the greatest growth in volts first. */
export function raisingFailures(failures: readonly StudyStrikeFailure[]): readonly Raising[] {
  const isRaising = (f: StudyStrikeFailure): f is Raising =>
    f.worst !== null && f.worst.afterV >= f.worst.beforeV * (1 + leastGrowth);
  const growthV = ({ worst }: Raising) => worst.afterV - worst.beforeV;
  return failures.filter(isRaising).sort((a, b) => growthV(b) - growthV(a) || byLost(a, b));
}

function byLost(a: StudyStrikeFailure, b: StudyStrikeFailure): number {
  return a.lost < b.lost ? -1 : 1;
}

function tableOf(page: StrikePage, told: readonly Raising[]): readonly string[] {
  if (told.length === 0) return [];
  const { lost, before, after } = said.head;
  const rows = told.map(({ lost: id, alike, worst: { a, b, beforeV, afterV } }) => ({
    label: page.sentence(alike.length > 0 ? said.rowInSeries : said.row, { lost: id, count: alike.length, a, b }),
    cells: [kilo(beforeV), kilo(afterV)],
  }));
  return textTable({ corner: lost, head: [before, after], rows }, page.terminal.width);
}

/** Protectors that conduct only then, or no longer. */
function gapsOf(page: StrikePage, { lost, fires = [], rests = [] }: Raising): readonly string[] {
  const of = (template: string, list: readonly string[]) =>
    list.length === 0 ? [] : [bullet(page, page.sentence(template, { lost, list }))];
  return [...of(said.fires, fires), ...of(said.rests, rests)];
}

function quietOf(page: StrikePage, count: number): readonly string[] {
  if (count === 0) return [];
  const template = count === 1 ? said.lessOne : said.less;
  return [paragraph(page, page.sentence(template, { count, share: percentOf(leastGrowth) }))];
}

function moreOf(page: StrikePage, rest: number): readonly string[] {
  return rest > 0 ? [paragraph(page, page.sentence(said.more, { count: rest }))] : [];
}
