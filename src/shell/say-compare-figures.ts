import type { ComparedStrike, Comparison, PathRow, ReachRow, Sides } from '../compare/comparison.ts';
import { compareWords as words } from '../words/compare-words.ts';
import { type ComparePage, ohmText } from './compare-page.ts';
import { bullet, headed, paragraph } from './page-blocks.ts';
import { type TextRow, textTable } from './text-table.ts';

/** More rows of one kind than this are a wall of figures. */
const mostRows = 8;

/** Figures that differ side by side; those of the whole always. */
export function figureBlocks(comparison: Comparison, page: ComparePage): readonly string[] {
  const rows = [...wholeRows(comparison, page), ...wayRows(comparison.paths, page), ...electrodeRows(comparison, page)];
  return [
    headed(page, words.headings.figures, table(page, rows)),
    strikeBlock(comparison.strike, page),
    reachBlock(comparison.reach, page),
  ];
}

function table(page: ComparePage, rows: readonly TextRow[]): readonly string[] {
  if (rows.length === 0) return [];
  const { corner, before, after } = words.columns;
  return textTable({ corner, head: [before, after], rows }, page.terminal.width - 2).map((line) => `  ${line}`);
}

function wholeRows({ earth, groups, unbonded, weakPoints }: Comparison, page: ComparePage): readonly TextRow[] {
  const { rows } = words;
  const count = <T>(list: readonly T[], is: (row: T, side: keyof Sides<unknown>) => boolean) =>
    (['before', 'after'] as const).map((side) => String(list.filter((row) => is(row, side)).length));
  const outside = (is: 'unbonded' | 'perhaps') =>
    (['before', 'after'] as const).map((side) =>
      listed(unbonded.filter((row) => row.is[side] === is).map((row) => row.id[side]!)),
    );
  const perhaps = outside('perhaps');
  return [
    {
      label: page.sentence(rows.earth),
      cells: [ohmText(earth.resistanceOhm.before), ohmText(earth.resistanceOhm.after)],
    },
    { label: page.sentence(rows.groups), cells: count(groups, (row, side) => row.id[side] !== null) },
    { label: page.sentence(rows.unbonded), cells: outside('unbonded') },
    ...(perhaps.every((cell) => cell === words.none) ? [] : [{ label: page.sentence(rows.perhaps), cells: perhaps }]),
    { label: page.sentence(rows.weak), cells: count(weakPoints, (row, side) => row.at[side] !== null) },
  ];
}

const listed = (ids: readonly string[]) => (ids.length === 0 ? words.none : ids.join(', '));

function electrodeRows({ earth }: Comparison, page: ComparePage): readonly TextRow[] {
  return earth.electrodes
    .filter((row) => row.standing === 'changed')
    .map((row) => ({
      label: page.sentence(words.rows.electrode, { id: row.id.after }),
      cells: [ohmText(row.ohm.before), ohmText(row.ohm.after)],
    }));
}

/** How many parts have a way, and how many have more than one. */
function wayRows(paths: readonly PathRow[], page: ComparePage): readonly TextRow[] {
  const cells = (is: (row: PathRow, side: keyof Sides<unknown>) => boolean) =>
    (['before', 'after'] as const).map((side) => String(paths.filter((row) => is(row, side)).length));
  const has = (aim: PathRow['aim'], least: number) =>
    cells((row, side) => row.aim === aim && (row.separatePaths[side] ?? 0) >= least);
  return [
    { label: page.sentence(words.rows.electrodeWay), cells: has('electrode', 1) },
    { label: page.sentence(words.rows.serviceWay), cells: has('service', 1) },
    { label: page.sentence(words.rows.twoWays), cells: has('service', 2) },
  ];
}

function moreThan(all: readonly unknown[], page: ComparePage): readonly string[] {
  const count = all.length - mostRows;
  return count > 0 ? [paragraph(page, page.sentence(words.more, { count: String(count) }), 2)] : [];
}

function strikeBlock(strike: ComparedStrike | null, page: ComparePage): string {
  if (strike === null) return '';
  const changed = strike.differences.filter((d) => d.standing === 'changed').sort((x, y) => change(y) - change(x));
  const volt = (peakV: number | null) => page.sentence('{peakV}', { peakV: peakV === null ? null : Math.abs(peakV) });
  const rows = changed.slice(0, mostRows).map((d) => ({
    label: page.sentence(words.rows.difference, { a: d.a.after, b: d.b.after }),
    cells: [volt(d.peakV.before), volt(d.peakV.after)],
  }));
  const note = strike.sameStroke ? [] : [paragraph(page, page.sentence(words.otherStroke), 2)];
  return headed(page, words.headings.strike, [...table(page, rows), ...moreThan(changed, page), ...note]);
}

function change({ peakV: { before, after } }: ComparedStrike['differences'][number]): number {
  return Math.abs(Math.abs(after ?? 0) - Math.abs(before ?? 0));
}

function reachBlock(reach: readonly ReachRow[], page: ComparePage): string {
  const { sentence } = page;
  const list = (ways: ReachRow['gone']) => ways.map(({ line, from }) => sentence(words.reachWay, { line, from }));
  const lines = reach
    .filter((row) => row.standing === 'changed')
    .flatMap((row) => [
      ...(row.gone.length === 0 ? [] : [sentence(words.reachGone, { part: row.part.after, list: list(row.gone) })]),
      ...(row.new.length === 0 ? [] : [sentence(words.reachNew, { part: row.part.after, list: list(row.new) })]),
    ]);
  const told = lines.slice(0, mostRows).map((text) => bullet(page, text));
  return headed(page, words.headings.reach, [...told, ...moreThan(lines, page)]);
}
