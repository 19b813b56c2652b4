/** Points on -1 to 1 and their weights. */
export interface GaussRule {
  readonly points: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Gauss-Legendre rule: exact for polynomials up to degree 2 order - 1.
 *
 * Source: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 25.4.29 (from memory); roots by Newton's method.
 */
export function gaussLegendre(order: number): GaussRule {
  const points = new Float64Array(order);
  const weights = new Float64Array(order);
  for (let i = 0; i < order; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (order + 0.5));
    for (let step = 0; step < 100; step++) {
      const { value, slope } = legendre(order, x);
      const move = value / slope;
      x -= move;
      if (Math.abs(move) < 1e-15) break;
    }
    points[i] = x;
    weights[i] = 2 / ((1 - x * x) * legendre(order, x).slope ** 2);
  }
  return { points, weights };
}

/** Integral of f from a to b by the rule. */
export function integrate({ points, weights }: GaussRule, f: (x: number) => number, a: number, b: number): number {
  const half = (b - a) / 2;
  let sum = 0;
  for (let i = 0; i < points.length; i++) sum += weights[i]! * f(a + half * (1 + points[i]!));
  return half * sum;
}

function legendre(order: number, x: number): { readonly value: number; readonly slope: number } {
  let [before, value] = [1, x];
  for (let k = 2; k <= order; k++) [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
  return { value, slope: (order * (x * value - before)) / (x * x - 1) };
}
