import type { Body, Run } from './body.ts';

/** Why metal cannot be solved for, with the figures that say so. */
export interface BodyTrouble {
  readonly key:
    | 'figure-missing'
    | 'no-metal'
    | 'above-ground'
    | 'too-far'
    | 'no-length'
    | 'no-radius'
    | 'shorter-than-radius'
    | 'core-outside-sheath'
    | 'no-sheath-resistivity';
  readonly figures: Readonly<Record<string, number>>;
}

/** Nothing of a station is longer, metres; and no grid of a country has larger coordinates. */
const longestM = 1e5;
const farthestM = 2e7;

/** What is wrong with a body, by run; []: it can be solved for. A figure that is not a number is missing. */
export function bodyTroubles({ runs }: Body): readonly BodyTrouble[] {
  if (runs.length === 0) return [{ key: 'no-metal', figures: {} }];
  return runs.flatMap((run) => troubleOf(run) ?? []);
}

function troubleOf({ from, to, radiusM, sheath }: Run): BodyTrouble | null {
  const lengthM = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  const depthM = Math.min(from[2], to[2]);
  const all = [lengthM, depthM, radiusM, sheath?.coreRadiusM ?? 0, sheath?.resistivityOhmM ?? 0];
  if (!all.every(Number.isFinite)) return { key: 'figure-missing', figures: {} };
  const farM = Math.max(...[...from, ...to].map(Math.abs));
  if (lengthM > longestM || farM > farthestM) return { key: 'too-far', figures: { lengthM, farM } };
  // a level rod comes out a rounding above the ground
  if (depthM < -1e-9) return { key: 'above-ground', figures: { depthM } };
  if (lengthM === 0) return { key: 'no-length', figures: { lengthM } };
  if (radiusM <= 0) return { key: 'no-radius', figures: { radiusM } };
  if (lengthM < radiusM) return { key: 'shorter-than-radius', figures: { lengthM, radiusM } };
  if (sheath === null) return null;
  const { coreRadiusM, resistivityOhmM } = sheath;
  if (coreRadiusM <= 0) return { key: 'no-radius', figures: { radiusM: coreRadiusM } };
  if (coreRadiusM > radiusM) return { key: 'core-outside-sheath', figures: { coreRadiusM, radiusM } };
  return resistivityOhmM < 0 ? { key: 'no-sheath-resistivity', figures: { resistivityOhmM } } : null;
}
