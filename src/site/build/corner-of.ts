import { directionOf } from '../format/positions.ts';
import type { Position } from '../site.ts';

/** Metres within which two corners are equally far out. */
const sameM = 1e-6;

/** The corner of a building that lies furthest out to a side, `ne`; where several do, as for `n`, their middle. */
export function cornerOf(corners: readonly Position[] | null, side: string | null): Position | null {
  const toward = side === null ? null : directionOf(side);
  if (corners === null || toward === null) return null;
  const out = corners.map((c) => c[0] * toward[0] + c[1] * toward[1]);
  const most = out.reduce((a, b) => Math.max(a, b), -Infinity);
  const furthest = corners.filter((_, i) => out[i]! >= most - sameM);
  const mean = (axis: 0 | 1 | 2) => furthest.reduce((sum, c) => sum + c[axis], 0) / furthest.length;
  return [mean(0), mean(1), mean(2)];
}
