/**
 * Share of the normal distribution (mean 0, standard deviation 1) above a figure. Series about 0, continued fraction in the
 * tail: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14 (from memory). 1e-13 of itself.
 */
export function normalAbove(x: number): number {
  if (Number.isNaN(x)) throw new RangeError('not a number');
  if (x < -3) return 1 - tail(-x);
  return x > 3 ? tail(x) : 0.5 - middleArea(x);
}

/** The figure that a share of the normal distribution lies above: the inverse of `normalAbove`. RangeError unless 0 < share < 1. */
export function normalExceededBy(share: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`a share of chance lies between 0 and 1: ${share}`);
  let [low, high] = [-40, 40];
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (normalAbove(middle) > share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function density(x: number): number {
  return Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
}

/** From 0 to x: density (x + x3/3 + x5/15 + ...). */
function middleArea(x: number): number {
  let [sum, term] = [x, x];
  for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return sum * density(x);
}

/** Above x: density / (x + 1 / (x + 2 / (x + 3 / ...))). */
function tail(x: number): number {
  let below = x;
  for (let depth = 120; depth >= 1; depth--) below = x + depth / below;
  return density(x) / below;
}
