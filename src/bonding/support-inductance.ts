import { filament } from '../materials/straight-inductance.ts';
import type { Support } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';

/**
 * Self partial inductance of a length of a support's metal, henry: a filament with the geometric mean distance of its legs
 * as radius (three legs: (r·s²)^(1/3) with the face s and the leg's own radius r, taken as 10 to 40 mm). null without
 * length or face. Source of the bundle rule: F. W. Grover, Inductance Calculations (1946), from memory.
 */
export function supportInductance(support: Support, lengthM: Interval | null): Interval | null {
  const { faceM } = support;
  const legs = legsOf(support);
  if (lengthM === null || faceM === null || legs === null) return null;
  return {
    low: filament(lengthM.low, meanRadius(leg.high, faceM.high, legs.high)),
    high: filament(lengthM.high, meanRadius(leg.low, faceM.low, legs.low)),
  };
}

/** A lattice has three legs or four where nobody counted; the fewer, the smaller the mean radius at one face. */
function legsOf({ legs, kind }: Support): Interval | null {
  if (legs !== null) return legs < 2 ? null : { low: legs, high: legs };
  return kind === 'lattice tower' ? { low: 3, high: 4 } : null;
}

/** Radius of one leg: ours, from tubes of 3/4 in to 3 in. */
const leg: Interval = { low: 0.01, high: 0.04 };

/** Of equal legs at the corners of a regular figure of that face. */
function meanRadius(legM: number, faceM: number, legs: number): number {
  const ring = faceM / (2 * Math.sin(Math.PI / legs));
  let product = legM;
  for (let k = 1; k < legs; k++) product *= 2 * ring * Math.sin((Math.PI * k) / legs);
  return product ** (1 / legs);
}
