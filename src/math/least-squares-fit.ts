import { leastSquares } from './least-squares.ts';

/** A sum of squares to be made small, of residuals that depend on parameters between bounds. */
export interface SquaresProblem {
  readonly low: ArrayLike<number>;
  readonly high: ArrayLike<number>;
  readonly residuals: (parameters: Float64Array) => Float64Array;
  /** Slopes of the residuals: one column for each parameter. */
  readonly slopes: (parameters: Float64Array) => readonly Float64Array[];
}

export interface SquaresFit {
  readonly parameters: Float64Array;
  readonly sumOfSquares: number;
}

/** Done when a step promises less than this share of the sum. */
const leastPromise = 1e-10;
const mostDamping = 1e8;

/**
 * The least sum that is reached downhill from a start: Levenberg-Marquardt, damped evenly (parameters are taken to be of like
 * scale, such as logarithms); a parameter at a bound that would leave it stays there. A start beyond bounds is moved to them.
 *
 * Source: K. Madsen, H. B. Nielsen, O. Tingleff, Methods for non-linear least squares problems (2004), algorithm 3.16 (from
 * memory); that bounds are held by leaving columns out is our own.
 */
export function leastSquaresFit(problem: SquaresProblem, start: ArrayLike<number>, mostSteps = 100): SquaresFit {
  const damping: Damping = { share: 1e-2, growth: 2 };
  let place = placeAt(problem, start);
  for (let step = 0; step < mostSteps; step++) {
    const next = stepFrom(problem, place, damping);
    if (next === null) break;
    place = next;
  }
  return { parameters: place.parameters, sumOfSquares: place.sum };
}

interface Place {
  readonly parameters: Float64Array;
  readonly residuals: Float64Array;
  readonly sum: number;
}

/** Relative to the longest column of slopes, squared. */
interface Damping {
  share: number;
  growth: number;
}

/** A better place, damped more until there is one; null: none that is worth going to. */
function stepFrom(problem: SquaresProblem, from: Place, damping: Damping): Place | null {
  const columns = problem.slopes(from.parameters);
  const free = freeParameters(problem, from, columns);
  const scale = Math.sqrt(Math.max(...columns.map(squares)));
  if (free.length === 0 || scale === 0) return null;
  while (damping.share < mostDamping) {
    const move = moveWithin(problem, from, columns, free, scale * Math.sqrt(damping.share));
    const there = from.parameters.map((p, at) => p + move[at]!);
    const next = placeAt(problem, there);
    const promised = from.sum - promisedSum(from, columns, next.parameters);
    if (Math.abs(promised) <= leastPromise * from.sum) return null;
    if (promised > 0 && next.sum < from.sum) {
      // as much as was promised: a third of the damping; half of it: the same
      damping.share = Math.max(
        1e-12,
        damping.share * Math.max(1 / 3, 1 - (2 * ((from.sum - next.sum) / promised) - 1) ** 3),
      );
      damping.growth = 2;
      return next;
    }
    damping.share *= damping.growth;
    damping.growth *= 2;
  }
  return null;
}

/** The damped step; a parameter that it would take beyond its bound goes up to it, and the others make the best of that. */
function moveWithin(
  { low, high }: SquaresProblem,
  from: Place,
  columns: readonly Float64Array[],
  free: readonly number[],
  ridge: number,
): Float64Array {
  const move = new Float64Array(columns.length);
  const side = from.residuals.map((r) => -r);
  let left = [...free];
  while (left.length > 0) {
    const solved = leastSquares(
      left.map((at) => columns[at]!),
      [side],
      ridge,
    )[0]!;
    for (const [k, at] of left.entries()) move[at] = solved[k]!;
    const over = left.find(
      (at) => from.parameters[at]! + move[at]! < low[at]! || from.parameters[at]! + move[at]! > high[at]!,
    );
    if (over === undefined) return move;
    move[over] = (move[over]! < 0 ? low[over]! : high[over]!) - from.parameters[over]!;
    for (let i = 0; i < side.length; i++) side[i] = side[i]! - move[over]! * columns[over]![i]!;
    left = left.filter((at) => at !== over);
  }
  return move;
}

function placeAt({ low, high, residuals }: SquaresProblem, parameters: ArrayLike<number>): Place {
  const inside = Float64Array.from(parameters, (p, at) => Math.min(high[at]!, Math.max(low[at]!, p)));
  const there = residuals(inside).slice();
  const sum = squares(there);
  // what is no number is no place to go to
  return { parameters: inside, residuals: there, sum: Number.isFinite(sum) ? sum : Number.POSITIVE_INFINITY };
}

/** All but those that stand at a bound and would leave it. */
function freeParameters(problem: SquaresProblem, from: Place, columns: readonly Float64Array[]): readonly number[] {
  return [...columns.keys()].filter((at) => {
    const downhill = -product(columns[at]!, from.residuals);
    const here = from.parameters[at]!;
    return downhill > 0 ? here < problem.high[at]! : here > problem.low[at]!;
  });
}

/** Sum of squares at another place if residuals were straight lines. */
function promisedSum(from: Place, columns: readonly Float64Array[], there: Float64Array): number {
  const residuals = from.residuals.slice();
  for (const [at, column] of columns.entries()) {
    const move = there[at]! - from.parameters[at]!;
    for (let i = 0; i < residuals.length; i++) residuals[i] = residuals[i]! + move * column[i]!;
  }
  return squares(residuals);
}

function squares(column: Float64Array): number {
  return product(column, column);
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
