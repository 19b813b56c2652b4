import type { Dimension } from './dimension.ts';
import { exact, type Interval, interval, scale } from './interval.ts';
import { nearName } from './near-name.ts';
import { numberPattern, readNumber, tidyNumbers } from './number-text.ts';
import { footM, inchM, plainUnit, type Unit, unitsOf, usualUnits } from './unit-table.ts';

export type { Dimension } from './dimension.ts';
export type { Interval } from './interval.ts';

/** Why a quantity cannot be read. */
export type QuantityFault =
  /** A bare number where a unit is due. values: text, expected, example. */
  | 'unit-missing'
  /** No such unit. values: text, unit, near ('' if none), expected. */
  | 'unit-unknown'
  /** A unit of another kind of figure. values: text, unit, kind, wanted, expected. */
  | 'unit-of-other-kind'
  /** `MOHM`: milli or mega. values: text, unit, expected. */
  | 'unit-ambiguous'
  /** values: text, expected. */
  | 'not-a-number'
  /** Only with `positive`. values: text. */
  | 'zero-or-negative'
  /** `100 to 90 ft`. values: text. */
  | 'range-reversed'
  /** `2,5 m`. values: text, corrected. */
  | 'decimal-comma'
  /** `over range` where no instrument was read. values: text, expected. */
  | 'over-range-not-here';

export type QuantityRead =
  | { readonly ok: true; readonly interval: Interval; readonly overRange: boolean }
  | { readonly ok: false; readonly code: QuantityFault; readonly values: Readonly<Record<string, string>> };

export interface QuantityOptions {
  /** Unit of a bare number, where one is allowed. */
  readonly bareUnit?: 'ft' | 'm';
  /** Whether `over range` (an instrument that shows no figure) may stand here. */
  readonly overRange?: boolean;
  /** Refuse zero and negative figures. */
  readonly positive?: boolean;
}

type Fault = Extract<QuantityRead, { ok: false }>;
type Side = { readonly value: number; readonly unit: string };

/** Longer texts are no figure; without an end to them looking for one would take time with the square of the length. */
const longest = 200;

/** 10 % either way: what `about` means in a site file. */
const aboutShare = 0.1;

const boundWords: readonly (readonly [pattern: RegExp, bound: 'about' | 'over' | 'under'])[] = [
  [/^(?:about|approximately|approx\.?|around|roughly|circa|ca\.?|~|≈)\s*/i, 'about'],
  [/^(?:over|more than|greater than|above|longer than|at least|no less than|not less than|>=|≥|>)\s*/i, 'over'],
  [/^(?:under|less than|below|shorter than|at most|up to|no more than|not more than|<=|≤|<)\s*/i, 'under'],
];

/**
 * Reads a quantity as a person writes it into SI base units (see Dimension): `8' 6"`, `5/8 in`, `13.3 mm²`, `180 Ω·m`,
 * `0.4 mohm`, `90 to 100 ft`, `over 100 ft`, `under 5 ohm`, `about 30 ft` (10 % either way), `> 1000 ohm`, and with
 * `overRange` also `over range`, which is {low: 0, high: Infinity}. Anything left over is a fault: nothing is guessed.
 * `m` and `M` before a unit are milli and mega; where only the capital differs and both exist, the case must be right.
 */
export function readQuantity(
  value: string | number,
  dimension: Dimension,
  options: QuantityOptions = {},
): QuantityRead {
  const typed = String(value).trim();
  if (typed.length > longest) return notANumber(`${typed.slice(0, 60)}...`, dimension);
  if (/^(?:over[\s-]?range|OL)$/i.test(typed)) return readOverRange(typed, dimension, options);
  const tidied = tidyNumbers(typed);
  if (!tidied.ok) return fault('decimal-comma', typed, { corrected: tidied.corrected });
  const { bound, rest } = takeBound(tidied.text);
  const range = readRange(rest, typed, dimension, options);
  if ('code' in range) return range;
  if (bound !== 'about' && bound !== null && range.low !== range.high) return notANumber(typed, dimension);
  const spread = spreadBy(bound, range);
  if (options.positive && (range.low <= 0 || spread.high <= 0)) return fault('zero-or-negative', typed, {});
  return { ok: true, interval: spread, overRange: false };
}

function readOverRange(typed: string, dimension: Dimension, options: QuantityOptions): QuantityRead {
  if (!options.overRange) return fault('over-range-not-here', typed, { expected: expected(dimension) });
  return { ok: true, interval: { low: 0, high: Infinity }, overRange: true };
}

function takeBound(text: string): { readonly bound: 'about' | 'over' | 'under' | null; readonly rest: string } {
  for (const [pattern, bound] of boundWords) {
    const rest = text.replace(pattern, '');
    if (rest !== text) return { bound, rest };
  }
  return { bound: null, rest: text };
}

function spreadBy(bound: 'about' | 'over' | 'under' | null, range: Interval): Interval {
  if (bound === 'over') return { low: range.low, high: Infinity };
  if (bound === 'under') return { low: Math.min(0, range.high), high: range.high };
  if (bound === null) return range;
  const low = scale(exact(range.low), 1 - Math.sign(range.low) * aboutShare).low;
  return { low, high: range.high * (1 + Math.sign(range.high) * aboutShare) };
}

function readRange(text: string, typed: string, dimension: Dimension, options: QuantityOptions): Interval | Fault {
  const sides = splitRange(text).map((part) => readSide(part, dimension));
  const [first, second] = sides;
  if (first === undefined || first === null || second === null || sides.length > 2) return notANumber(typed, dimension);
  const last = second ?? first;
  const high = inBase(last, typed, dimension, options);
  if (typeof high !== 'number') return high;
  const low = inBase(first.unit === '' ? { ...first, unit: last.unit } : first, typed, dimension, options);
  if (typeof low !== 'number') return low;
  return low > high ? fault('range-reversed', typed, {}) : interval(low, high);
}

/** `90 to 100 ft`, `90 ft to 100 ft`, `90–100 ft`, `90-100 ft` into two sides; anything else is one side. */
function splitRange(text: string): readonly string[] {
  return text.split(/\s+(?:to|through)\s+|\s*(?:–|—|\.{2,3})\s*|(?<=[\d\p{L}'"°])(?<![\d.]e)\s*-\s*(?=[\d.])/iu);
}

const footInch = new RegExp(
  `^(${numberPattern})\\s*(?:'|ft\\.?|feet|foot)[\\s,]*(${numberPattern})\\s*(?:"|''|in\\.?|inch|inches)$`,
  'i',
);
const figureAndUnit = new RegExp(`^(${numberPattern})\\s*(.*)$`, 's');

function readSide(text: string, dimension: Dimension): Side | null {
  const parts = dimension === 'length' ? footInch.exec(text.trim()) : null;
  if (parts !== null) return feetAndInches(readNumber(parts[1]!), readNumber(parts[2]!));
  const [, figure, unit] = figureAndUnit.exec(text.trim()) ?? [];
  const value = figure === undefined ? null : readNumber(figure);
  return value === null ? null : { value, unit: plainUnit(unit!) };
}

function feetAndInches(feet: number | null, inches: number | null): Side | null {
  if (feet === null || inches === null || inches < 0) return null;
  const sign = feet < 0 || Object.is(feet, -0) ? -1 : 1;
  return { value: feet * footM + sign * inches * inchM, unit: 'm' };
}

function inBase(side: Side, typed: string, dimension: Dimension, options: QuantityOptions): number | Fault {
  const bare = dimension === 'length' ? (options.bareUnit ?? '') : '';
  const unit = side.unit === '' ? bare : side.unit;
  if (unit === '' && dimension !== 'number') return unitMissing(typed, dimension);
  const found = findUnit(unit, dimension);
  if (found === 'ambiguous') return fault('unit-ambiguous', typed, { unit, expected: expected(dimension) });
  if (found === null) return unknownUnit(unit, typed, dimension);
  return side.value * found.factor + found.offset;
}

/** The unit as spelled; else the same letters in other case, when every unit so spelled is the same size. */
function findUnit(unit: string, dimension: Dimension): Unit | 'ambiguous' | null {
  const units = unitsOf[dimension];
  const same = units.find((u) => u.spelling === unit);
  if (same !== undefined) return same;
  const alike = units.filter((u) => u.spelling.toLowerCase() === unit.toLowerCase());
  const [first] = alike;
  if (first === undefined) return null;
  return alike.every((u) => u.factor === first.factor) ? first : 'ambiguous';
}

function unitMissing(typed: string, dimension: Dimension): Fault {
  const unit = usualUnits[dimension][0]!;
  return fault('unit-missing', typed, { expected: expected(dimension), example: `${typed} ${unit}` });
}

function unknownUnit(unit: string, typed: string, dimension: Dimension): Fault {
  const others = (Object.keys(unitsOf) as Dimension[]).filter((d) => d !== dimension && findUnit(unit, d) !== null);
  const values = { unit, expected: expected(dimension) };
  if (others.length > 0) return fault('unit-of-other-kind', typed, { ...values, kind: others[0]!, wanted: dimension });
  const spellings = [...usualUnits[dimension], ...unitsOf[dimension].map((u) => u.spelling)];
  return fault('unit-unknown', typed, { ...values, near: nearName(unit, spellings) ?? '' });
}

function notANumber(typed: string, dimension: Dimension): Fault {
  return fault('not-a-number', typed, { expected: expected(dimension) });
}

function expected(dimension: Dimension): string {
  return usualUnits[dimension].join(', ');
}

function fault(code: QuantityFault, text: string, values: Readonly<Record<string, string>>): Fault {
  return { ok: false, code, values: { text, ...values } };
}
