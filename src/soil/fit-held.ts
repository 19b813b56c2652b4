import type { SquaresProblem } from '../math/least-squares-fit.ts';

/** One parameter, or two parameters as a sum (1) or a difference (-1). */
export interface Direction {
  readonly first: number;
  readonly second?: number;
  readonly sign?: 1 | -1;
}

/** A problem with one figure held: what is left to choose, and both ways between that and the whole. */
export interface HeldProblem extends SquaresProblem {
  readonly whole: (free: ArrayLike<number>) => Float64Array;
  readonly from: (whole: ArrayLike<number>) => Float64Array;
}

export function along({ first, second, sign = 1 }: Direction, whole: ArrayLike<number>): number {
  return second === undefined ? whole[first]! : whole[first]! + sign * whole[second]!;
}

/** Least (-1) or greatest (1) value that the bounds allow. */
export function farthestAlong({ low, high }: SquaresProblem, direction: Direction, sense: 1 | -1): number {
  const [near, far] = sense > 0 ? [high, low] : [low, high];
  const { first, second, sign = 1 } = direction;
  if (second === undefined) return near[first]!;
  return near[first]! + (sign > 0 ? near[second]! : -far[second]!);
}

/** The second parameter of a held sum follows from the first, whose bounds give way to those of both. */
export function heldProblem(problem: SquaresProblem, direction: Direction, value: number): HeldProblem {
  const { first, second, sign = 1 } = direction;
  const gone = second ?? first;
  const kept = Array.from({ length: problem.low.length }, (_, at) => at).filter((at) => at !== gone);
  const whole = (free: ArrayLike<number>): Float64Array => {
    const all = new Float64Array(kept.length + 1);
    for (const [k, at] of kept.entries()) all[at] = free[k]!;
    all[gone] = second === undefined ? value : sign * (value - all[first]!);
    return all;
  };
  const bounds = heldBounds(problem, direction, value);
  return {
    low: kept.map((at) => bounds.low[at]!),
    high: kept.map((at) => bounds.high[at]!),
    whole,
    from: (all) => Float64Array.from(kept, (at) => all[at]!),
    residuals: (free) => problem.residuals(whole(free)),
    slopes: (free) => {
      const columns = problem.slopes(whole(free));
      return kept.map((at) => {
        if (second === undefined || at !== first) return columns[at]!;
        return columns[first]!.map((slope, i) => slope - sign * columns[second]![i]!);
      });
    },
  };
}

function heldBounds({ low, high }: SquaresProblem, { first, second, sign = 1 }: Direction, value: number) {
  const bounds = { low: Array.from(low), high: Array.from(high) };
  if (second === undefined) return bounds;
  const [a, b] = [value - sign * low[second]!, value - sign * high[second]!];
  bounds.low[first] = Math.max(low[first]!, Math.min(a, b));
  bounds.high[first] = Math.min(high[first]!, Math.max(a, b));
  return bounds;
}
