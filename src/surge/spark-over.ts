import type { Interval } from '../units/interval.ts';
import { positive, within } from './positive.ts';

/** Spark-over at one steepness of the rise, volts and volts per second. */
export interface SteepnessPoint {
  readonly slopeVPerS: number;
  readonly sparkOverV: Interval;
}

/** Spark-over read off a table; `beyond`: on a steeper rise than the table has, carried on along its last line. */
export interface SparkOver extends Interval {
  readonly beyond: boolean;
}

/**
 * Spark-over of a gap on a rise of a steepness, from points rising in steepness: straight lines over the logarithm of it, the
 * first point for anything slower. Steeper than the last point the last line goes on (by the last factor of ten a tube of
 * 90 V rises by a quarter) and the answer is marked: no table says so.
 */
export function sparkOverAt(points: readonly SteepnessPoint[], slopeVPerS: number): SparkOver {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('no point of spark-over');
  if (positive(slopeVPerS, 'steepness') <= first.slopeVPerS || points.length === 1) {
    return { ...first.sparkOverV, beyond: slopeVPerS > last.slopeVPerS };
  }
  let next = 1;
  while (next < points.length - 1 && points[next]!.slopeVPerS < slopeVPerS) next++;
  const [a, b] = [points[next - 1]!, points[next]!];
  if (!(b.slopeVPerS > a.slopeVPerS)) throw new RangeError('points of spark-over do not rise in steepness');
  const part = Math.log(slopeVPerS / a.slopeVPerS) / Math.log(b.slopeVPerS / a.slopeVPerS);
  const at = (side: 'low' | 'high') => a.sparkOverV[side] + part * (b.sparkOverV[side] - a.sparkOverV[side]);
  return { low: at('low'), high: at('high'), beyond: slopeVPerS > last.slopeVPerS };
}

/** Lowest spark-over of tubes of a nominal voltage and a tolerance (0.2: a fifth either way), volts. */
export function lowestSparkOver(nominalV: number, toleranceShare: number): number {
  return positive(nominalV, 'nominal voltage') * (1 - within(toleranceShare, 0, 0.9, 'tolerance'));
}

/**
 * Energy that passes into a load before a gap fires on a straight rise, joule: V^3 / (3 S R), V the spark-over, S the steepness
 * in volts per second, R the load in ohm. By hand: the integral of (S t)^2 / R up to V / S.
 */
export function energyBeforeFiring(sparkOverV: number, slopeVPerS: number, loadOhm: number): number {
  return positive(sparkOverV, 'spark-over') ** 3 / (3 * positive(slopeVPerS, 'steepness') * positive(loadOhm, 'load'));
}
