/** A place on the ground seen from above: east, north, in metres. */
export type Point = readonly [number, number];

/** Straight distance in metres. */
export function distanceM([aE, aN]: Point, [bE, bN]: Point): number {
  return Math.hypot(bE - aE, bN - aN);
}

/** Twice the signed area of the triangle a, b, c in square metres; above 0 where a, b, c turn left. */
export function turn([aE, aN]: Point, [bE, bN]: Point, [cE, cN]: Point): number {
  return (bE - aE) * (cN - aN) - (bN - aN) * (cE - aE);
}

/** The place at a share of the way from a (0) to b (1). */
export function between([aE, aN]: Point, [bE, bN]: Point, share: number): Point {
  return [aE + share * (bE - aE), aN + share * (bN - aN)];
}

/** Share of the way from a to b (0 to 1) at which a straight piece is nearest to p; 0 where a and b are one place. */
export function nearestShare([pE, pN]: Point, [aE, aN]: Point, [bE, bN]: Point): number {
  const [dE, dN] = [bE - aE, bN - aN];
  const square = dE * dE + dN * dN;
  return square > 0 ? Math.min(1, Math.max(0, ((pE - aE) * dE + (pN - aN) * dN) / square)) : 0;
}
