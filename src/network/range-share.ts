import { closedFormOf } from '../electrodes/closed-form-of.ts';
import type { ElectrodeShape } from '../electrodes/electrode.ts';
import { likelyFigures } from '../electrodes/electrode-resistance.ts';
import { type EnclosingSoils, solvedResistance, type Way } from '../electrodes/solved-resistance.ts';
import { exact, type Interval } from '../units/interval.ts';

const one = exact(1);

/**
 * How far a depth or a thickness known by a range moves what metal has alone: low and high over the same at its likely
 * figures, each in the same soil.
 */
export function rangeShare(shape: ElectrodeShape, soils: EnclosingSoils | null, way: Way | null): Interval {
  const ranges = Object.entries(closedFormOf(shape).figures);
  const isExact = ranges.every(([, range]) => range === null || range.low === range.high);
  if (isExact || soils === null || ranges.some(([, range]) => range === null)) return one;
  const figures = likelyFigures(Object.fromEntries(ranges) as Readonly<Record<string, Interval>>);
  const likely = { ...shape, ...Object.fromEntries(Object.entries(figures).map(([k, v]) => [k, exact(v)])) };
  const [whole, plain] = [shape, likely as ElectrodeShape].map((s) => solvedResistance(s, soils, way).ohm);
  if (whole == null || plain == null) return one;
  const high = Number.isFinite(whole.high) && Number.isFinite(plain.high) ? whole.high / plain.high : Infinity;
  return { low: plain.low > 0 ? Math.min(1, whole.low / plain.low) : 1, high: Math.max(1, high) };
}
