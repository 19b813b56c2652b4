/** A place on the ground seen from above: east, north, in metres. */
export type Point = readonly [number, number];

/** Straight distance in metres; a square root, since Math.hypot is many times slower and guards against sizes that no site has. */
export function distanceM(a: Point, b: Point): number {
  const dE = b[0] - a[0];
  const dN = b[1] - a[1];
  return Math.sqrt(dE * dE + dN * dN);
}

/** Twice the signed area of the triangle a, b, c in square metres; above 0 where a, b, c turn left. */
export function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** The place at a share of the way from a (0) to b (1). */
export function between(a: Point, b: Point, share: number): Point {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
}

/** Share of the way from a to b (0 to 1) at which a straight piece is nearest to p; 0 where a and b are one place. */
export function nearestShare(p: Point, a: Point, b: Point): number {
  const dE = b[0] - a[0];
  const dN = b[1] - a[1];
  const square = dE * dE + dN * dN;
  return square > 0 ? Math.min(1, Math.max(0, ((p[0] - a[0]) * dE + (p[1] - a[1]) * dN) / square)) : 0;
}
