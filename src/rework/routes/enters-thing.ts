import type { Obstacles } from './obstacles.ts';
import { between, distanceM, nearestShare, type Point, turn } from './point.ts';

type Piece = readonly [Point, Point];

/** Where two straight pieces properly cross; null where they do not. */
export function crossing([a, b]: Piece, [c, d]: Piece): Point | null {
  const [fromC, fromD] = [turn(a, b, c), turn(a, b, d)];
  const [fromA, fromB] = [turn(c, d, a), turn(c, d, b)];
  if (!(fromC * fromD < 0 && fromA * fromB < 0)) return null;
  return between(a, b, fromA / (fromA - fromB));
}

/**
 * Whether the straight piece from a to b crosses the outline or the metal of a thing itself, or runs inside it; along a
 * wall, or up to it, it may. Clearances are not asked.
 */
export function entersThing(a: Point, b: Point, thing: number, { things, isInside, toleranceM }: Obstacles): boolean {
  const { pieces, kind } = things[thing]!;
  if (pieces.some((piece) => crossing([a, b], piece) !== null)) return true;
  // Without a crossing, in and out change only at corners that lie on the piece.
  const corners = pieces.map(([p]) => ({ p, share: nearestShare(p, a, b) }));
  const on = corners.filter(({ p, share }) => distanceM(p, between(a, b, share)) <= toleranceM).map((c) => c.share);
  const shares = [0, ...on.sort((x, y) => x - y), 1];
  if (kind === 'barrier') return on.some((share) => share > 0 && share < 1);
  return shares.slice(1).some((to, i) => isInside(between(a, b, (shares[i]! + to) / 2), thing));
}
