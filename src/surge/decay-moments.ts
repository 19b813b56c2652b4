/**
 * Integrals of exp(-x (1 - u)) u^k over u from 0 to 1, k = 0, 1, ... (as many as `moments` takes), by M(k) = (1 - k M(k - 1)) / x. Where x is
 * small that loses digits: there the last is a series, and the others follow from it backwards.
 */
export function decayMoments(x: number, moments: Float64Array): void {
  const count = moments.length;
  if (x < 1) {
    moments[count - 1] = series(x, count - 1);
    for (let k = count - 1; k > 0; k--) moments[k - 1] = (1 - x * moments[k]!) / k;
    return;
  }
  moments[0] = -Math.expm1(-x) / x;
  for (let k = 1; k < count; k++) moments[k] = (1 - k * moments[k - 1]!) / x;
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
