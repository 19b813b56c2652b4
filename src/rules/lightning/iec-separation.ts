import type { Facts } from '../../facts/facts.ts';
import { claimsOf } from '../claims.ts';
import type { Asking } from './side-flash.ts';

/** s = ki / km kc l: ki by class I to IV, km 1 through air and 0.5 through a wall, kc by the number of down conductors. */
const ki = { 1: 0.08, 2: 0.06, 3: 0.04, 4: 0.04 } as const;
const km = { air: 1, solid: 0.5 } as const;
const kcOf = (down: number) => (down <= 1 ? 1 : down === 2 ? 0.66 : 0.44);

/** The least and the most that the separation distance can be while class and what lies between are not known. */
export function iecSeparation(header: Facts['header']): Asking['distanceM'] {
  const { lightningClass } = claimsOf(header);
  const [least, most] = lightningClass === null ? [ki[4], ki[1]] : [ki[lightningClass], ki[lightningClass]];
  return (alongM, down) => ({
    low: (least / km.air) * kcOf(down.high) * alongM.low,
    high: (most / km.solid) * kcOf(down.low) * alongM.high,
  });
}
