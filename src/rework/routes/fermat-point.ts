import { distanceM, type Point, turn } from './point.ts';

/**
 * The place from which the ways to three places are shortest in sum: where they are seen 120 degrees apart, or the place
 * with an angle of 120 degrees or more. By barycentric weights a / sin(A + 60 deg) of the triangle with sides a and angles A
 * (first isogonic centre; textbook geometry).
 */
export function fermatPoint(p: Point, q: Point, r: Point): Point {
  const corners = [p, q, r] as const;
  const sides = [distanceM(q, r), distanceM(r, p), distanceM(p, q)] as const;
  const angles = [angleAt(p, q, r), angleAt(q, r, p), angleAt(r, p, q)] as const;
  const wide = angles.findIndex((a) => a >= (2 * Math.PI) / 3 - 1e-12);
  if (wide >= 0) return corners[wide]!;
  const weights = sides.map((side, i) => side / Math.sin(angles[i]! + Math.PI / 3));
  const whole = weights[0]! + weights[1]! + weights[2]!;
  const mean = (axis: 0 | 1) => corners.reduce((sum, c, i) => sum + c[axis] * (weights[i]! / whole), 0);
  return [mean(0), mean(1)];
}

/** Angle at a between b and c in radians; where a is one of them it is a half turn, so that a is the place. */
function angleAt(a: Point, b: Point, c: Point): number {
  const across = turn(a, b, c);
  const along = (b[0] - a[0]) * (c[0] - a[0]) + (b[1] - a[1]) * (c[1] - a[1]);
  if (across === 0 && along === 0) return Math.PI;
  return Math.atan2(Math.abs(across), along);
}
