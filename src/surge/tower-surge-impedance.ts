import type { Interval } from '../units/interval.ts';
import { positive } from './positive.ts';

/** Speed of light, m/s. */
const lightMPerS = 299792458;

/** What three published formulas make of one tower; ohm. */
export interface TowerImpedance {
  readonly cylinderOhm: number;
  readonly coneOhm: number;
  readonly waistOhm: number;
  /** Lowest and highest of the three: nobody knows a tower better by its outline alone. */
  readonly bandOhm: Interval;
  /** The band as inductance for each metre of height, Z / c, of a tower short against the front. */
  readonly inductanceHPerM: Interval;
}

/**
 * Surge impedance of a tower as one tube of that height and mean radius, metres, standing on conducting ground:
 *
 *     cylinder   60 ln(2 sqrt2 h / r) - 60
 *     cone       60 ln[sqrt2 sqrt(1 + (h / r)^2)]
 *     waist      60 ln cot[1/2 arctan(r / h)]
 *
 * Sources: M. A. Sargent, M. Darveniza, IEEE Trans. PAS-88 (1969), the first two; CIGRE and IEEE guides, the third (all from
 * memory). The cylinder needs a height above its radius. For a lattice of legs and bracing r is that of the tube in their
 * place (`bundleRadius`).
 */
export function towerSurgeImpedance(heightM: number, radiusM: number): TowerImpedance {
  const slim = positive(heightM, 'height') / positive(radiusM, 'radius');
  if (slim <= 1) throw new RangeError(`a tower ${heightM} m high of radius ${radiusM} m`);
  const cylinderOhm = 60 * Math.log(2 * Math.SQRT2 * slim) - 60;
  const coneOhm = 60 * Math.log(Math.SQRT2 * Math.hypot(1, slim));
  const waistOhm = -60 * Math.log(Math.tan(Math.atan(1 / slim) / 2));
  const all = [cylinderOhm, coneOhm, waistOhm];
  const bandOhm = { low: Math.min(...all), high: Math.max(...all) };
  const inductanceHPerM = { low: bandOhm.low / lightMPerS, high: bandOhm.high / lightMPerS };
  return { cylinderOhm, coneOhm, waistOhm, bandOhm, inductanceHPerM };
}
