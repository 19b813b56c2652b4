/**
 * Weights of one exact step of a mode, x its decay over the step: with g quadratic in the step (at its start, middle, end),
 *
 *     z(end) = kept z(start) + gain (start g0 + middle gm + end g1),   kept = exp(-x),
 *     and start, middle, end the integrals of exp(-x (1 - u)) over u from 0 to 1 with the three quadratics through 0, 1/2, 1.
 */
export interface StepWeights {
  readonly kept: number;
  readonly start: number;
  readonly middle: number;
  readonly end: number;
}

export function stepWeights(x: number): StepWeights {
  const [zero, one, two] = moments(x);
  return {
    kept: Math.exp(-x),
    start: zero - 3 * one + 2 * two,
    middle: 4 * one - 4 * two,
    end: 2 * two - one,
  };
}

/** Integrals of exp(-x (1 - u)) u^k, k = 0, 1, 2; by a series where x is small, since the closed forms lose digits there. */
function moments(x: number): readonly [number, number, number] {
  if (x < 0.5) return [series(x, 0), series(x, 1), series(x, 2)];
  const zero = -Math.expm1(-x) / x;
  const one = (1 - zero) / x;
  return [zero, one, (1 - 2 * one) / x];
}

/** Sum of k! (-x)^n / (n + k + 1)!, from the integral by parts. */
function series(x: number, k: number): number {
  let term = 1 / (k + 1);
  let sum = term;
  for (let n = 1; Math.abs(term) > 1e-17 && n < 40; n++) {
    term *= -x / (n + k + 1);
    sum += term;
  }
  return sum;
}
