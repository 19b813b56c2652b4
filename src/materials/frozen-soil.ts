import type { Interval } from '../units/interval.ts';
import { frozenRatioAt, temperatureLimitsC, temperatureSource } from './soil-temperature.ts';
import type { Citation } from './source.ts';

/** A range of resistivity over that of the same soil as it is otherwise, and where the range comes from. */
export interface SoilRatio {
  readonly ratio: Interval;
  readonly source: Citation;
}

/**
 * Frozen top layer over the same soil thawed at the freezing point, when nobody knows how cold it is: from just frozen (2.2)
 * to -15 C (33), the spread of both published curves included. An article that quotes IEEE Std 80 (read) has 10 to 30.
 */
export const frozenTop: SoilRatio = {
  ratio: { low: frozenRatioAt(0)!.low, high: frozenRatioAt(temperatureLimitsC.low)!.high },
  source: temperatureSource,
};
