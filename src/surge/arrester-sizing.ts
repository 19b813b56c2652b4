import { powerOfPeakVolts } from './line-peak-volts.ts';
import { positive } from './positive.ts';

/**
 * How many times the line's peak voltage the lowest spark-over should be: a maker's selection note (read), a rule of the
 * trade and no standard's.
 */
export const usualMargin = 1.5;

/**
 * The most power, watt, that a gap carries at a margin without being fired by it: (V / margin)^2 / (2 Z0 SWR), V its lowest
 * spark-over, volts; power delivered to the load, peak of the envelope.
 */
export function mostPower(lowestSparkOverV: number, impedanceOhm: number, swr: number, margin = usualMargin): number {
  if (!(margin >= 1 && margin < Infinity)) throw new RangeError(`a margin is 1 or more: ${margin}`);
  return powerOfPeakVolts(positive(lowestSparkOverV, 'spark-over') / margin, impedanceOhm, swr);
}

/** The least lowest spark-over, volts, that a peak voltage on the line leaves with a margin. */
export function leastSparkOver(peakV: number, margin = usualMargin): number {
  if (!(margin >= 1 && margin < Infinity)) throw new RangeError(`a margin is 1 or more: ${margin}`);
  return positive(peakV, 'peak') * margin;
}
