import type { BuriedPiece } from './buried-pieces.ts';

type Point = readonly [number, number];

/** Whether two straight pieces come nearer to each other than they are thick, in plan and in depth. */
export function piecesMeet(a: BuriedPiece, b: BuriedPiece): boolean {
  const thickM = a.radiusM + b.radiusM;
  const apartM = Math.max(a.depthM.low - b.depthM.high, b.depthM.low - a.depthM.high);
  return apartM <= thickM && distanceM(a, b) <= thickM;
}

/** In plan; 0 where they cross. */
function distanceM(a: BuriedPiece, b: BuriedPiece): number {
  if (doCross(a, b)) return 0;
  return Math.min(toPiece(a.from, b), toPiece(a.to, b), toPiece(b.from, a), toPiece(b.to, a));
}

function doCross(a: BuriedPiece, b: BuriedPiece): boolean {
  const isApart = (p: BuriedPiece, q: BuriedPiece) => side(p, q.from) * side(p, q.to) < 0;
  return isApart(a, b) && isApart(b, a);
}

/** Above 0 on the left of a piece, below 0 on its right. */
function side({ from, to }: BuriedPiece, at: Point): number {
  return (to[0] - from[0]) * (at[1] - from[1]) - (to[1] - from[1]) * (at[0] - from[0]);
}

function toPiece(at: Point, { from, to }: BuriedPiece): number {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const [dx, dy] = [at[0] - from[0], at[1] - from[1]];
  const square = x * x + y * y;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, (dx * x + dy * y) / square));
  return Math.hypot(dx - share * x, dy - share * y);
}
