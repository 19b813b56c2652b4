/**
 * Double integral of 1 / distance along two pieces that are not parallel, metres. Each stretches from its 0 to its 1 (metres
 * along it from the point where the two lines come nearest to each other); `apartSquared` is the square of the distance of the
 * lines there, thickness of the metal included, and may be 0.
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
export function skewMutual(
  a0: number,
  a1: number,
  b0: number,
  b1: number,
  cosine: number,
  sineSquared: number,
  apartSquared: number,
): number {
  const d00 = distance(a0, b0, cosine, sineSquared, apartSquared);
  const d01 = distance(a0, b1, cosine, sineSquared, apartSquared);
  const d10 = distance(a1, b0, cosine, sineSquared, apartSquared);
  const d11 = distance(a1, b1, cosine, sineSquared, apartSquared);
  const sides =
    seen(a1, b0, d10, b1, d11, cosine, sineSquared, apartSquared) -
    seen(a0, b0, d00, b1, d01, cosine, sineSquared, apartSquared) +
    seen(b1, a0, d01, a1, d11, cosine, sineSquared, apartSquared) -
    seen(b0, a0, d00, a1, d10, cosine, sineSquared, apartSquared);
  if (apartSquared === 0) return sides;
  const level = apartSquared * cosine;
  const scale = Math.sqrt(apartSquared * sineSquared);
  const angles =
    Math.atan((level + a1 * b1 * sineSquared) / (scale * d11)) -
    Math.atan((level + a1 * b0 * sineSquared) / (scale * d10)) -
    Math.atan((level + a0 * b1 * sineSquared) / (scale * d01)) +
    Math.atan((level + a0 * b0 * sineSquared) / (scale * d00));
  return sides - Math.sqrt(apartSquared / sineSquared) * angles;
}

function distance(a: number, b: number, cosine: number, sineSquared: number, apartSquared: number): number {
  const along = a - b * cosine;
  return Math.sqrt(apartSquared + along * along + b * b * sineSquared);
}

/**
 * `at` times what the point there of one line sees of the piece from `low` to `high` of the other, whose ends are `dLow` and
 * `dHigh` away: the integral of 1 / distance, the two inverse hyperbolic sines in one logarithm.
 */
function seen(
  at: number,
  low: number,
  dLow: number,
  high: number,
  dHigh: number,
  cosine: number,
  sineSquared: number,
  apartSquared: number,
): number {
  const offSquared = apartSquared + at * at * sineSquared;
  // the point lies on the other line: nothing at that place counts `at` times
  if (offSquared === 0) return 0;
  const foot = at * cosine;
  return at * Math.log(reach(high - foot, dHigh, offSquared) / reach(low - foot, dLow, offSquared));
}

/** t + sqrt(t^2 + off^2), without loss where t is negative. */
function reach(t: number, distanceM: number, offSquared: number): number {
  return t >= 0 ? t + distanceM : offSquared / (distanceM - t);
}
