import type { Position } from '../site/site.ts';

/** The point of a way that is nearest to another way, and the corner that it comes after. */
export interface SidePoint {
  readonly index: number;
  readonly at: Position;
  readonly distanceM: number;
}

/** Where a way comes nearest to another (or to one point), in space. RangeError for a way of nothing. */
export function nearestOfWays(way: readonly Position[], other: readonly Position[]): SidePoint {
  if (way.length === 0 || other.length === 0) throw new RangeError('a way of no point');
  const legs = (points: readonly Position[]) =>
    points.length === 1
      ? [[points[0]!, points[0]!] as const]
      : points.slice(1).map((to, i) => [points[i]!, to] as const);
  const all = legs(way).flatMap(([from, to], index) =>
    legs(other).map(([start, end]) => ({ index, ...nearestOfLegs([from, to], [start, end]) })),
  );
  return all.reduce((best, one) => (one.distanceM < best.distanceM ? one : best));
}

type Leg = readonly [from: Position, to: Position];

/**
 * Two straight legs: the distance is least at a foot of their common normal, or at an end of one of them. The normal is found
 * by turns from the one to the other, which ends on it: distance is convex along both.
 */
function nearestOfLegs(a: Leg, b: Leg): Omit<SidePoint, 'index'> {
  const starts = [a[0], a[1], footOn(a, b[0]), footOn(a, b[1])];
  const tried = starts.map((start) => {
    let at = start;
    for (let turn = 0; turn < turns; turn++) at = footOn(a, footOn(b, at));
    return { at, distanceM: apartM(at, footOn(b, at)) };
  });
  return tried.reduce((best, one) => (one.distanceM < best.distanceM ? one : best));
}

const turns = 60;

function footOn([from, to]: Leg, point: Position): Position {
  const run = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
  const squared = run[0] ** 2 + run[1] ** 2 + run[2] ** 2;
  const along = (point[0] - from[0]) * run[0] + (point[1] - from[1]) * run[1] + (point[2] - from[2]) * run[2];
  const share = squared === 0 ? 0 : Math.min(1, Math.max(0, along / squared));
  return [from[0] + share * run[0], from[1] + share * run[1], from[2] + share * run[2]];
}

function apartM(a: Position, b: Position): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
