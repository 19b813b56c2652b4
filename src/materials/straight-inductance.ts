import type { Interval } from '../units/interval.ts';
import type { Wire } from './wire.ts';

/** μ0 / 2π, henry per metre. */
const mu0Over2Pi = 2e-7;

/** Where the current flows in the section: all of it (slow), or its skin alone (fast: a strike). */
export type CurrentDepth = 'uniform' | 'skin';

/**
 * Self partial inductance of a straight run in free air, henry. Round wire and tube: 2e-7 l [ln(2l/r) − 1] with current in
 * the skin alone, −3/4 in place of −1 with uniform current in a round wire (E. B. Rosa, Bull. Bur. Stand. 4, 1908); for l of
 * at least 10 r, below that the filament form of the same paper. Strap and braid: 2e-7 l [ln(2l/(w+t)) + 1/2 + 0.2235
 * (w+t)/l], F. E. Terman, Radio Engineers' Handbook (1943), and F. W. Grover (1946), both from memory; for l at least the
 * width. A strap of unknown thickness counts as thin. Ranges of length and size give a range; null when either is unknown.
 * A bend only lowers it, so this is the high side for a run that is not straight.
 */
export function straightInductance(
  wire: Wire | null,
  lengthM: Interval | null,
  depth: CurrentDepth = 'skin',
): Interval | null {
  if (wire === null || lengthM === null) return null;
  if (wire.widthM !== null) return strap(wire.widthM, wire.thicknessM ?? { low: 0, high: 0 }, lengthM);
  if (wire.diameterM === null) return null;
  const inside = depth === 'uniform' && wire.form === 'round' ? mu0Over2Pi / 4 : 0;
  const of = (length: number, diameter: number) => outside(length, diameter / 2) + inside * length;
  return { low: of(lengthM.low, wire.diameterM.high), high: of(lengthM.high, wire.diameterM.low) };
}

function outside(lengthM: number, radiusM: number): number {
  if (lengthM < 10 * radiusM) return filament(lengthM, radiusM);
  return lengthM === Infinity ? Infinity : mu0Over2Pi * lengthM * (Math.log((2 * lengthM) / radiusM) - 1);
}

/**
 * Self inductance of a filament whose return is far away, with the radius as its distance from itself, henry.
 * Infinite length has infinite inductance; none has none.
 */
export function filament(lengthM: number, radiusM: number): number {
  if (lengthM === 0) return 0;
  if (lengthM === Infinity) return Infinity;
  return mu0Over2Pi * (lengthM * Math.asinh(lengthM / radiusM) - Math.hypot(lengthM, radiusM) + radiusM);
}

function strap(widthM: Interval, thicknessM: Interval, lengthM: Interval): Interval {
  const of = (length: number, girth: number) => {
    if (length === 0 || length === Infinity) return length;
    return Math.max(0, mu0Over2Pi * length * (Math.log((2 * length) / girth) + 0.5 + (0.2235 * girth) / length));
  };
  const low = of(lengthM.low, widthM.high + thicknessM.high);
  return { low, high: of(lengthM.high, widthM.low + thicknessM.low) };
}
