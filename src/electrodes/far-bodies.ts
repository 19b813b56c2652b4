import type { SoilPoint } from './body.ts';
import type { SolvedBodies } from './solve-bodies.ts';

/** What a body gives off in one layer, as a point. */
export interface FarPoint {
  readonly ampere: number;
  readonly atM: SoilPoint;
  readonly layer: number;
}

/** Distance, in radii of what a body has in a layer, from which a point does: out by 2e-5 of what lifts the body. */
const farRadii = 20;

/**
 * Bodies far from all places on the plan (two numbers each), taken together in each layer at the middle of their currents; and
 * the segments of all others that give off a current.
 */
export function farAndNear(
  { segments, images }: Pick<SolvedBodies, 'segments' | 'images'>,
  currents: Float64Array,
  placesM: Float64Array,
): { readonly far: readonly FarPoint[]; readonly near: readonly number[] } {
  const layers = images.soil.resistivityOhmM.length;
  const members = new Map<number, number[]>();
  for (let j = 0; j < segments.count; j++) {
    if (currents[j] === 0) continue;
    const key = segments.body[j]! * layers + segments.layer[j]!;
    const own = members.get(key);
    if (own === undefined) members.set(key, [j]);
    else own.push(j);
  }
  const far: FarPoint[] = [];
  const near: number[] = [];
  const box = boxOf(placesM);
  for (const own of members.values()) {
    const atM = middleOf(segments.middleM, currents, own);
    const isFar = distanceFrom(box, atM) > farRadii * radiusOf(segments, own, atM);
    if (!isFar) near.push(...own);
    else far.push({ ampere: own.reduce((sum, j) => sum + currents[j]!, 0), atM, layer: segments.layer[own[0]!]! });
  }
  return { far, near };
}

function middleOf(middleM: Float64Array, currents: Float64Array, own: readonly number[]): SoilPoint {
  const weight = own.reduce((sum, j) => sum + Math.abs(currents[j]!), 0);
  const along = (axis: number): number =>
    own.reduce((sum, j) => sum + Math.abs(currents[j]!) * middleM[3 * j + axis]!, 0) / weight;
  return [along(0), along(1), along(2)];
}

function radiusOf(
  { middleM, lengthM }: SolvedBodies['segments'],
  own: readonly number[],
  [x, y, z]: SoilPoint,
): number {
  return own.reduce((most, j) => {
    const [dx, dy, dz] = [middleM[3 * j]! - x, middleM[3 * j + 1]! - y, middleM[3 * j + 2]! - z];
    return Math.max(most, Math.hypot(dx, dy, dz) + lengthM[j]! / 2);
  }, 0);
}

interface Box {
  readonly westM: number;
  readonly eastM: number;
  readonly southM: number;
  readonly northM: number;
}

function boxOf(placesM: Float64Array): Box {
  let [westM, eastM, southM, northM] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let p = 0; 2 * p < placesM.length; p++) {
    westM = Math.min(westM, placesM[2 * p]!);
    eastM = Math.max(eastM, placesM[2 * p]!);
    southM = Math.min(southM, placesM[2 * p + 1]!);
    northM = Math.max(northM, placesM[2 * p + 1]!);
  }
  return { westM, eastM, southM, northM };
}

function distanceFrom({ westM, eastM, southM, northM }: Box, [x, y]: SoilPoint): number {
  return Math.hypot(Math.max(0, westM - x, x - eastM), Math.max(0, southM - y, y - northM));
}
