/**
 * Integrals of exp(-x (1 - u)) u^k over u from 0 to 1, k = 0, 1, ... (`count` of them); by a series where x is small, since the
 * closed forms lose digits there.
 */
export function decayMoments(x: number, count: number): Float64Array {
  const moments = new Float64Array(count);
  if (x < 1) {
    for (let k = 0; k < count; k++) moments[k] = series(x, k);
    return moments;
  }
  moments[0] = -Math.expm1(-x) / x;
  for (let k = 1; k < count; k++) moments[k] = (1 - k * moments[k - 1]!) / x;
  return moments;
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
