/**
 * Coefficients (1, u, ... u^5) of the six polynomials of which each is 1, or has slope 1, at one of the points 0, 1/2, 1 and is 0
 * without slope in all else: value and slope at 0, at 1/2, at 1, one after the other in one row. Hermite's interpolation.
 */
export const quintics = inOneRow(
  [0, 0.5, 1].flatMap((own) => {
    const [p, q] = [0, 0.5, 1].filter((point) => point !== own) as [number, number];
    const scale = 1 / ((own - p) * (own - q));
    const line = [p * q * scale, -(p + q) * scale, scale];
    const square = times(line, line);
    const slope = line[1]! + 2 * line[2]! * own;
    return [times(square, [1 + 2 * slope * own, -2 * slope]), times(square, [-own, 1])];
  }),
);

/** Coefficients of their derivatives, likewise. */
export const quinticSlopes = quintics.map((_, at) => (at % 6 === 5 ? 0 : ((at % 6) + 1) * quintics[at + 1]!));

function inOneRow(lists: readonly (readonly number[])[]): Float64Array {
  return Float64Array.from(lists.flat());
}

function times(a: readonly number[], b: readonly number[]): readonly number[] {
  return [0, 1, 2, 3, 4, 5].map((power) => a.reduce((sum, factor, i) => sum + factor * (b[power - i] ?? 0), 0));
}
