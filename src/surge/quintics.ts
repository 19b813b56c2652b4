/**
 * Coefficients (1, u, ... u^5) of the six polynomials of which each is 1, or has slope 1, at one of the points 0, 1/2, 1 and is 0
 * without slope in all else: value and slope at 0, at 1/2, at 1. Hermite's interpolation.
 */
export const quintics: readonly (readonly number[])[] = [0, 0.5, 1].flatMap((own) => {
  const [p, q] = [0, 0.5, 1].filter((point) => point !== own) as [number, number];
  const scale = 1 / ((own - p) * (own - q));
  const line = [p * q * scale, -(p + q) * scale, scale];
  const square = times(line, line);
  const slope = line[1]! + 2 * line[2]! * own;
  return [times(square, [1 + 2 * slope * own, -2 * slope]), times(square, [-own, 1])];
});

function times(a: readonly number[], b: readonly number[]): readonly number[] {
  return [0, 1, 2, 3, 4, 5].map((power) => a.reduce((sum, factor, i) => sum + factor * (b[power - i] ?? 0), 0));
}
