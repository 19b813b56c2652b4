import { slenderRod } from './rod.ts';

/**
 * How the potential falls off round one upright rod with its top at grade, in uniform soil, along the surface. Even leakage;
 * the potential of the rod itself by the slender form. Against boundary elements (3 m x 16 mm) V / V0 reads 4 % high at
 * 0.1 m, 3 % at 0.3 m, 2 % at 1 m and is within 0.7 % from 2 m on. Range: distances from the rod's surface outward.
 *
 * Source: MIL-HDBK-419A volume I, equations 2-20, 2-59 and 2-60 (read in part; its figures are reproduced in the tests).
 */
export interface FlushRod {
  readonly lengthM: number;
  readonly radiusM: number;
}

/** Potential of the surface at a distance from the rod's axis, ohm (volt per ampere) per ohm metre of soil. */
export function surfacePotential({ lengthM, radiusM }: FlushRod, distanceM: number): number {
  if (!(distanceM >= radiusM)) throw new RangeError('a distance begins at the surface of the rod');
  return Math.asinh(lengthM / distanceM) / (2 * Math.PI * lengthM);
}

/** Share of the rod's resistance that lies in the soil nearer than a distance: 0 to 1. */
export function shareInside(rod: FlushRod, distanceM: number): number {
  return 1 - surfacePotential(rod, distanceM) / potentialOf(rod);
}

/** What a pace outward from a distance spans, over the potential of the rod. `fromM` null: from the rod itself. */
export function stepShare(rod: FlushRod, fromM: number | null, paceM: number): number {
  if (fromM === null) return shareInside(rod, paceM);
  return (surfacePotential(rod, fromM) - surfacePotential(rod, fromM + paceM)) / potentialOf(rod);
}

function potentialOf({ lengthM, radiusM }: FlushRod): number {
  return slenderRod({ lengthM, topM: 0 }, 2 * radiusM);
}
