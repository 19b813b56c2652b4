import type { DifferenceRow } from '../compare/comparison.ts';
import { formatQuantity } from '../units/format.ts';
import { statementWords } from '../words/statement-words.ts';
import { cell, type Row, row, type Section, tableIfAny } from './block.ts';
import { unbonded } from './compare-change.ts';
import type { CompareContext } from './compare-context.ts';
import { ohmText } from './compare-figures.ts';
import { endNames, noVolts } from './compare-strike.ts';
import { countText } from './counts-by-set.ts';
import { partNames, sayIn } from './page-context.ts';
import { hasUnprotected, isFromOutside } from './statement-cables.ts';
import { volt } from './strike-view.ts';

const words = statementWords.figures;
type Side = 'before' | 'after';

/** The few figures that say most, before and after, each with how it is known. */
export function statementFiguresSection(page: CompareContext): Section {
  const table = tableIfAny({
    id: 'statement-figures',
    caption: words.caption,
    head: [words.figure, page.sides.before, page.sides.after, words.known],
    rows: [...counts(page), resistance(page), outside(page), cables(page), ...volts(page)],
  });
  return { id: 'figures', heading: words.heading, blocks: table };
}

function line(name: string, before: string, after: string, known: string): Row {
  return row(cell(name), cell(before), cell(after), cell(known));
}

function counts({ before, after }: CompareContext): readonly Row[] {
  const of = (key: 'hazards' | 'defects' | 'advices' | 'cannotTell') =>
    line(words[key], countText(before.study, key), countText(after.study, key), words.counted);
  return [of('hazards'), of('defects'), of('advices'), of('cannotTell')];
}

function resistance(page: CompareContext): Row {
  const { resistanceOhm } = page.comparison.earth;
  const ohm = (side: Side) => ohmText(resistanceOhm[side]);
  const soil = page.after.study.earth.soil?.known ?? words.notKnown;
  const known = sayIn(page.after, words.workedOut, { soil });
  return line(sayIn(page.after, words.resistance), ohm('before'), ohm('after'), known);
}

function outside(page: CompareContext): Row {
  const of = (side: Side) =>
    sayIn(page.after, words.ofAll, {
      n: unbonded(page.comparison, side),
      all: String(page[side].study.earth.electrodes.length),
    });
  return line(sayIn(page.after, words.outside), of('before'), of('after'), words.counted);
}

function cables(page: CompareContext): Row {
  const of = (side: Side) => {
    const { study } = page[side];
    const all = study.lines.filter((l) => isFromOutside(study, l));
    const open = all.filter((l) => hasUnprotected(study, l));
    return sayIn(page.after, words.ofAll, { n: String(open.length), all: String(all.length) });
  };
  return line(words.unprotected, of('before'), of('after'), words.counted);
}

/** Between what a line or a person's reach joins, in the same stroke on both sides; else nothing is said. */
function volts(page: CompareContext): readonly Row[] {
  const { strike } = page.comparison;
  const peakA = strike?.peakA.after ?? null;
  if (strike === null || !strike.sameStroke || peakA === null) return [];
  const joined = strike.differences.filter((d) => d.why === 'line' || d.why === 'reach');
  const both = joined.filter((d) => d.peakV.before !== null && d.peakV.after !== null);
  const name = sayIn(page.after, words.volts, { stroke: formatQuantity(peakA, 'current', 'si') ?? '' });
  const alone = oneSided(page, joined);
  if (both.length === 0 && alone.length > 0) return alone;
  const most = (side: Side) => voltsText(page, worstOf(both, side), side);
  return [line(name, most('before'), most('after'), words.modelled), ...alone];
}

/**
 * Where the worst pair of a side has no figure on the other, as when its one end hung on nothing: in a line of its own, so
 * that nobody takes it for a figure that rose.
 */
function oneSided(page: CompareContext, joined: readonly DifferenceRow[]): readonly Row[] {
  return (['before', 'after'] as const).flatMap((side): readonly Row[] => {
    const worst = worstOf(joined, side);
    const other = side === 'before' ? 'after' : 'before';
    if (worst === null || worst.peakV[other] !== null) return [];
    const cells = { [side]: voltsText(page, worst, side), [other]: noVoltsText(page, worst, other) };
    return [line(words.voltsOneSide, cells.before!, cells.after!, words.modelled)];
  });
}

function worstOf(rows: readonly DifferenceRow[], side: Side): DifferenceRow | null {
  const there = rows.filter((d) => d.peakV[side] !== null);
  return there.reduce<DifferenceRow | null>(
    (most, d) => (most === null || d.peakV[side]! > most.peakV[side]! ? d : most),
    null,
  );
}

function voltsText(page: CompareContext, row: DifferenceRow | null, side: Side): string {
  if (row === null) return words.notKnown;
  const other = side === 'before' ? 'after' : 'before';
  const end = (ids: DifferenceRow['a']) => endNames(page, { ...ids, [other]: null });
  return sayIn(page.after, words.voltsBetween, { volts: volt(row.peakV[side]!), a: end(row.a), b: end(row.b) });
}

function noVoltsText(page: CompareContext, row: DifferenceRow, side: Side): string {
  const why = noVolts(page, row, side);
  if (typeof why === 'string') return words.noVolts[why];
  return sayIn(page.after, words.tiedToNothing, { list: partNames(page[side], why) });
}
