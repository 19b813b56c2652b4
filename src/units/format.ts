import type { Dimension } from './dimension.ts';
import { type DisplayUnit, displayUnits } from './display-units.ts';
import type { Interval } from './interval.ts';
import { awgNameOfArea } from './wire-gauge.ts';

export { dimensionOfKey } from './dimension.ts';

export type UnitSystem = 'us' | 'si' | 'both-us-first' | 'both-si-first';

export interface FormatOptions {
  /** Most significant digits shown; default 3. */
  readonly digits?: number;
}

/**
 * An SI figure or range in words for people: `10 ft (3.05 m)`, `24 to 51 ohm`, `over 1000 ohm`, `under 5 ohm`. At most
 * three significant digits; a range is rounded to about a twentieth of its width, never to fewer than two digits. Where
 * both systems use the same unit it is given once. null for null and for a range of which nothing is known (0 to
 * Infinity): the caller says 'unknown'. A section that is a wire gauge bears its name: `6 AWG (13.3 mm²)`. A figure that
 * is not a number is refused (RangeError).
 */
export function formatQuantity(
  value: number | Interval | null,
  dimension: Dimension,
  system: UnitSystem,
  options: FormatOptions = {},
): string | null {
  if (value === null) return null;
  const range = typeof value === 'number' ? { low: value, high: value } : value;
  if (Number.isNaN(range.low) || Number.isNaN(range.high)) throw new RangeError(`no figure to show as ${dimension}`);
  if (range.high === Infinity && range.low <= 0) return null;
  const digits = options.digits ?? 3;
  const us = gaugeOf(range, dimension) ?? inUnits(range, displayUnits[dimension].us, digits);
  const si = inUnits(range, displayUnits[dimension].si, digits);
  if (system === 'us' || us === si) return us;
  if (system === 'si') return si;
  return system === 'both-us-first' ? `${us} (${withoutBound(si)})` : `${si} (${withoutBound(us)})`;
}

function gaugeOf({ low, high }: Interval, dimension: Dimension): string | null {
  const name = dimension === 'area' ? awgNameOfArea(low) : null;
  return name !== null && awgNameOfArea(high) === name ? name : null;
}

/** `over 100 ft (30.5 m)`: the word is said once. */
function withoutBound(text: string): string {
  return text.replace(/^(?:over|under) /, '');
}

function inUnits(range: Interval, units: readonly DisplayUnit[], digits: number): string {
  if (range.high === Infinity) return `over ${single(range.low, units, digits)}`;
  if (range.low === range.high) return single(range.low, units, digits);
  if (range.low === 0) return `under ${single(range.high, units, digits)}`;
  return between(range, units, digits);
}

function single(value: number, units: readonly DisplayUnit[], digits: number): string {
  const unit = unitFor(value, units);
  return join(rounded(inUnit(value, unit), digits), unit);
}

function between(range: Interval, units: readonly DisplayUnit[], digits: number): string {
  const unit = unitFor(Math.max(Math.abs(range.low), Math.abs(range.high)), units);
  const low = inUnit(range.low, unit);
  const high = inUnit(range.high, unit);
  if (low !== 0 && Math.abs(low) < 0.01)
    return `${single(range.low, units, digits)} to ${single(range.high, units, digits)}`;
  const step = 10 ** Math.floor(Math.log10((high - low) / 20));
  const [from, to] = [low, high].map((figure) => rounded(figure, digitsFor(figure, step, digits)));
  return from === to ? join(to!, unit) : `${from} to ${join(to!, unit)}`;
}

/** Significant digits that show a figure down to the step, at least two and at most `digits`. */
function digitsFor(figure: number, step: number, digits: number): number {
  if (figure === 0) return 1;
  const wanted = Math.floor(Math.log10(Math.abs(figure))) - Math.round(Math.log10(step)) + 1;
  return Math.min(digits, Math.max(2, wanted));
}

/** The greatest unit that the figure reaches; for 0 the one marked as usual. */
function unitFor(value: number, units: readonly DisplayUnit[]): DisplayUnit {
  if (value === 0) return units.find((u) => u.usual) ?? units[0]!;
  return units.findLast((u) => Math.abs(value) >= u.from) ?? units[0]!;
}

function inUnit(value: number, unit: DisplayUnit): number {
  return (value - unit.offset) / unit.factor;
}

function rounded(figure: number, digits: number): string {
  if (!Number.isFinite(figure)) return figure < 0 ? 'minus infinity' : 'infinity';
  const number = Number(figure.toPrecision(digits));
  return String(number).includes('e') ? plainDecimal(number) : String(number);
}

/** Without an exponent: people read `0.0000001`. Beyond twenty digits nobody counts them any more. */
function plainDecimal(number: number): string {
  if (Math.abs(number) >= 1) return number.toString().replace(/^1e\+/, '10^').replace('e+', ' x 10^');
  return number.toFixed(20).replace(/0+$/, '');
}

function join(figure: string, unit: DisplayUnit): string {
  const glue = unit.name === '' || unit.name === '°' ? '' : ' ';
  return `${figure}${glue}${unit.name}`;
}
