/**
 * Points of a step at which a sum must hold, as shares of it: the last is its end. Three-stage Radau IIA: exact for polynomials of
 * the fifth degree, and nothing rings.
 *
 * E. Hairer, G. Wanner, Solving Ordinary Differential Equations II (1996), IV.5 (from memory).
 */
export const radauPoints = [(4 - Math.sqrt(6)) / 10, (4 + Math.sqrt(6)) / 10, 1] as const;

/** Row s: coefficients (1, u, u^2) of the parabola that is 1 at point s and 0 at the two others. */
export const radauParabolas: readonly (readonly [number, number, number])[] = radauPoints.map((own) => {
  const [p, q] = radauPoints.filter((point) => point !== own) as [number, number];
  const scale = 1 / ((own - p) * (own - q));
  return [p * q * scale, -(p + q) * scale, scale];
});
