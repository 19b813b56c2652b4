import type { Trench } from './ground.ts';
import { isPlace, type Obstacles } from './obstacles.ts';
import { between, distanceM, nearestShare, type Point } from './point.ts';

/** A straight piece of ground along which a route counts less. */
export interface TrenchPiece {
  readonly a: Point;
  readonly b: Point;
  readonly factor: number;
  /** Of which end it is the metal; null for a trench. */
  readonly end: number | null;
}

/** Straight pieces of trenches that are clear of all things: within a clearance a trench is not used. */
export function trenchPieces(trenches: readonly Trench[], obstacles: Obstacles): readonly TrenchPiece[] {
  return trenches.flatMap(({ routeM, factor }) => {
    if (!(factor >= 0 && factor < 1)) return [];
    const run = routeM.filter(isPlace);
    return run.slice(1).flatMap((b, i) => clearPieces(run[i]!, b, obstacles).map((p) => ({ ...p, factor, end: null })));
  });
}

function clearPieces(a: Point, b: Point, obstacles: Obstacles): readonly { readonly a: Point; readonly b: Point }[] {
  const lengthM = distanceM(a, b);
  const blocked = [...obstacles.stretches(a, b)].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const free: (readonly [number, number])[] = [];
  let at = 0;
  for (const [from, to] of [...blocked, [1, 1] as const]) {
    if ((from - at) * lengthM > obstacles.sameM) free.push([at, from]);
    at = Math.max(at, to);
  }
  return free
    .filter(([from, to]) => obstacles.isClear(between(a, b, (from + to) / 2)))
    .map(([from, to]) => ({ a: between(a, b, from), b: between(a, b, to) }));
}

/**
 * Where the way from p is best joined to a piece, or left: at the angle whose cosine is the factor, either way along it.
 * (Of all joining places x, |p - x| + factor times the rest of the piece is least there: the derivative is 0.) With
 * `branches` also straight across, where a way branches from a trench that is used on both sides. Those beyond the ends of
 * the piece are none: its ends are places of their own.
 */
export function bestJoins(p: Point, { a, b, factor }: TrenchPiece, branches: boolean): readonly Point[] {
  const lengthM = distanceM(a, b);
  if (lengthM === 0) return [];
  const along = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / lengthM;
  const asideM = Math.abs((p[0] - a[0]) * (b[1] - a[1]) - (p[1] - a[1]) * (b[0] - a[0])) / lengthM;
  const shiftM = (asideM * factor) / Math.sqrt(1 - factor * factor);
  const aslant = shiftM > 0 ? [along - shiftM, along + shiftM] : [];
  const all = branches || shiftM === 0 ? [along, ...aslant] : aslant;
  return all.filter((s) => s > 0 && s < lengthM).map((s) => between(a, b, s / lengthM));
}

/** Whether p lies on a piece. */
export function isOnPiece(p: Point, { a, b }: TrenchPiece, toleranceM: number): boolean {
  return distanceM(p, between(a, b, nearestShare(p, a, b))) <= toleranceM;
}
