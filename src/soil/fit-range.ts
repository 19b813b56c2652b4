import { leastSquaresFit, type SquaresFit, type SquaresProblem } from '../math/least-squares-fit.ts';
import { along, type Direction, farthestAlong, heldProblem } from './fit-held.ts';

export interface FitRange {
  /** null: no end up to the bounds of what is looked for. */
  readonly low: number | null;
  readonly high: number | null;
  /** A better fit that was come across on the way. */
  readonly better: SquaresFit | null;
}

/**
 * Range of a parameter, or of a sum of them, by profile likelihood: all values at which the others can be chosen so that the
 * sum of squares stays within `limit`. Walked outward from the known fits (the best first), the others refitted at every step.
 *
 * Source: D. J. Venzon, S. H. Moolgavkar, Applied Statistics 37 (1988), for the profile and its limit (from memory); the walk is
 * our own.
 */
export function fitRange(
  problem: SquaresProblem,
  fits: readonly SquaresFit[],
  direction: Direction,
  limit: number,
): FitRange {
  const inside = fits.filter((fit) => fit.sumOfSquares <= limit);
  const placeOf = (fit: SquaresFit): number => along(direction, fit.parameters);
  const walk = (sense: 1 | -1): Walk => {
    const outermost = inside.reduce((a, b) => (sense * (placeOf(b) - placeOf(a)) > 0 ? b : a));
    return walkOut({ problem, direction, limit, inside, allowance: limit - fits[0]!.sumOfSquares }, outermost, sense);
  };
  const [down, up] = [walk(-1), walk(1)];
  const best = down.best.sumOfSquares < up.best.sumOfSquares ? down.best : up.best;
  const known = fits[0]!.sumOfSquares;
  const isBetter = best.sumOfSquares < known - worthwhile * (limit - known);
  return { low: down.end, high: up.end, better: isBetter ? best : null };
}

interface Asked {
  readonly problem: SquaresProblem;
  readonly direction: Direction;
  readonly limit: number;
  /** Known fits within the limit. */
  readonly inside: readonly SquaresFit[];
  /** What the limit leaves above the best fit. */
  readonly allowance: number;
}

interface Walk {
  readonly end: number | null;
  readonly best: SquaresFit;
}

/** A fit is better by at least this share of what the limit allows. */
const worthwhile = 1e-3;
const firstStep = 0.05;
const growth = 1.7;
const longestStep = 1;
/** An end is good to this, in the logarithm. */
const fine = 1e-3;

function walkOut(asked: Asked, from: SquaresFit, sense: 1 | -1): Walk {
  const farthest = farthestAlong(asked.problem, asked.direction, sense);
  let here: Stop = { value: along(asked.direction, from.parameters), fit: from };
  let best = from;
  for (let step = firstStep; sense * (farthest - here.value) > fine; step = Math.min(longestStep, step * growth)) {
    const value = sense * Math.min(sense * (here.value + sense * step), sense * farthest);
    const next = stopAt(asked, value, here);
    if (next.fit.sumOfSquares < best.sumOfSquares) best = next.fit;
    if (next.fit.sumOfSquares > asked.limit) {
      const end = between(asked, here, next);
      return { end: owedToBounds(asked, end) ? null : end.value, best };
    }
    here = next;
  }
  return { end: null, best };
}

interface Stop {
  readonly value: number;
  readonly fit: SquaresFit;
}

/** The rest refitted with the value held: from the stop before, and where that leaves the range, from the other known fits. */
function stopAt(asked: Asked, value: number, from: Stop): Stop {
  let fit = fitHeld(asked, value, from.fit);
  for (const other of asked.inside) {
    if (fit.sumOfSquares <= asked.limit) break;
    const again = fitHeld(asked, value, other);
    if (again.sumOfSquares < fit.sumOfSquares) fit = again;
  }
  return { value, fit };
}

/** Where the sum of squares meets the limit, by secants on its root kept between an inner and an outer stop. */
function between(asked: Asked, inner: Stop, outer: Stop): Stop {
  let [inside, outside] = [inner, outer];
  for (let step = 0; step < 20 && Math.abs(outside.value - inside.value) > fine; step++) {
    const [low, high] = [inside.fit.sumOfSquares, outside.fit.sumOfSquares];
    const share = Math.min(0.9, Math.max(0.1, (asked.limit - low) / (high - low)));
    const value = inside.value + share * (outside.value - inside.value);
    const middle = { value, fit: fitHeld(asked, value, inside.fit) };
    if (middle.fit.sumOfSquares <= asked.limit) inside = middle;
    else outside = middle;
  }
  return inside;
}

/**
 * Whether an end is only there because another parameter may not go on: a thinner layer would carry the walk further. (One at a
 * bound beyond which nothing changes, such as a floor that hardly conducts, takes nothing from an end.)
 */
function owedToBounds({ problem, direction, allowance }: Asked, { value, fit }: Stop): boolean {
  const held = heldProblem(problem, direction, value);
  const free = held.from(fit.parameters);
  const residuals = held.residuals(free).slice();
  return held.slopes(free).some((column, at) => {
    const rise = 2 * column.reduce((sum, slope, i) => sum + slope * residuals[i]!, 0);
    const atLow = free[at]! <= held.low[at]! + atBound && rise > 0;
    const atHigh = free[at]! >= held.high[at]! - atBound && rise < 0;
    return (atLow || atHigh) && Math.abs(rise) * Math.LN10 > noticed * allowance;
  });
}

/** So near, in the logarithm, is at a bound. */
const atBound = 1e-6;
/** Share of the allowance that ten times beyond the bound would win. */
const noticed = 0.1;

function fitHeld({ problem, direction }: Asked, value: number, start: SquaresFit): SquaresFit {
  const held = heldProblem(problem, direction, value);
  const fit = leastSquaresFit(held, held.from(start.parameters), 40);
  return { parameters: held.whole(fit.parameters).slice(), sumOfSquares: fit.sumOfSquares };
}
