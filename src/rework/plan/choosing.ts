import type { WorkCost, WorkEffect } from '../work.ts';
import type { Totals } from './burden-of.ts';
import { costOfSet, fitsIn, type Limits } from './limits.ts';
import { isPossible } from './sets-of-works.ts';
import type { Trials } from './trials.ts';

/** What a search chooses from. All lists go by the number of a work in the pool. */
export interface Choosing {
  readonly trials: Trials;
  /** Works that may be chosen, in order. */
  readonly candidates: readonly number[];
  readonly costs: readonly WorkCost[];
  readonly totals: Totals;
  readonly limits: Limits;
  /** Of each candidate with what it needs, on the site as it is. */
  readonly alone: ReadonlyMap<number, WorkEffect>;
}

/** A set that could be done: what each needs is in, nothing clashes, the limits hold. */
export function mayBeDone({ trials, costs, limits }: Choosing, set: readonly number[]): boolean {
  return (
    isPossible(trials.pool, set) &&
    fitsIn(
      set.map((i) => costs[i]!),
      limits,
    )
  );
}

/** Cheaper first: by money or material, then by hours, then fewer, then by their numbers. */
export function byCost({ costs, totals }: Choosing): (a: readonly number[], b: readonly number[]) => number {
  const hours = (set: readonly number[]) => set.reduce((sum, i) => sum + costs[i]!.hours.low + costs[i]!.hours.high, 0);
  return (a, b) => {
    const money = costOfSet(costs, a, totals) - costOfSet(costs, b, totals);
    // sums in another order differ in their last digits
    if (Math.abs(money) > 1e-9 * (1 + totals.cost)) return money;
    return hours(a) - hours(b) || a.length - b.length || byNumbers(a, b);
  };
}

function byNumbers(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((n, i) => n !== b[i]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}
