/** Two lines in space and a piece on each, from the two points where the lines come nearest to each other. Metres. */
export interface SkewPair {
  /** Ends of the first piece, along it from its nearest point. */
  readonly a0: number;
  readonly a1: number;
  /** Ends of the second piece, likewise. */
  readonly b0: number;
  readonly b1: number;
  readonly cosine: number;
  readonly sine: number;
  /** Between the two lines where they are nearest, thickness of the metal included; may be 0. */
  readonly apartM: number;
}

/**
 * Double integral of 1 / distance along two pieces that are not parallel, metres:
 *
 *     sum over the four pairs of ends, with signs, of  a L(a; b) + b L(b; a) - (d / sin) A(a, b)
 *
 * where L(a; b) = asinh((b - a cos) / sqrt(d^2 + a^2 sin^2)) is what an end of one sees of the other, and
 * A = atan((d^2 cos + a b sin^2) / (d sin D)), with D the distance of the two ends. Exact to rounding over the square of the
 * sine.
 *
 * Source: G. A. Campbell, Mutual inductances of circuits composed of straight wires, Phys. Rev. 5 (1915); F. W. Grover,
 * Inductance Calculations (1946), chapter 7 (from memory); held against numerical double integrals in its tests.
 */
export function skewMutual(pair: SkewPair): number {
  const { a0, a1, b0, b1 } = pair;
  const sides = a1 * seen(pair, a1, b0, b1) - a0 * seen(pair, a0, b0, b1);
  const otherSides = b1 * seen(pair, b1, a0, a1) - b0 * seen(pair, b0, a0, a1);
  if (pair.apartM === 0) return sides + otherSides;
  const angles = angle(pair, a1, b1) - angle(pair, a1, b0) - angle(pair, a0, b1) + angle(pair, a0, b0);
  return sides + otherSides - (pair.apartM / pair.sine) * angles;
}

/** What the point at `at` of one line sees of the piece from `low` to `high` of the other: the integral of 1 / distance. */
function seen({ cosine, sine, apartM }: SkewPair, at: number, low: number, high: number): number {
  if (at === 0 && apartM === 0) return 0;
  const foot = at * cosine;
  const offM = Math.sqrt(apartM * apartM + at * at * sine * sine);
  return Math.asinh((high - foot) / offM) - Math.asinh((low - foot) / offM);
}

function angle({ cosine, sine, apartM }: SkewPair, a: number, b: number): number {
  const along = a - b * cosine;
  const across = b * sine;
  const distance = Math.sqrt(apartM * apartM + along * along + across * across);
  return Math.atan((apartM * apartM * cosine + a * b * sine * sine) / (apartM * sine * distance));
}
