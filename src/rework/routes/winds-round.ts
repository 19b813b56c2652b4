import { type Point, turn } from './point.ts';

/**
 * Whether a closed outline winds round p at least once, either way: then p is inside, also where the outline crosses or
 * covers itself (winding number, counted where edges pass the level of p). On the outline itself it may be either.
 */
export function windsRound(corners: readonly Point[], p: Point): boolean {
  let winds = 0;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    if (a[1] <= p[1] && b[1] > p[1] && turn(a, b, p) > 0) winds++;
    else if (a[1] > p[1] && b[1] <= p[1] && turn(a, b, p) < 0) winds--;
  });
  return winds !== 0;
}
