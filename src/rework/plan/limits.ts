import type { WorkCost } from '../work.ts';
import { moneyOf, type Totals } from './burden-of.ts';

export interface Limits {
  /** Most money, in the currency of the file. */
  readonly budget: number | null;
  readonly hours: number | null;
}

/** Whether works stay within what may be spent, at the upper end of their cost. */
export function fitsIn(costs: readonly WorkCost[], limits: Limits): boolean {
  return overOf(costs, limits) === null;
}

/** Which limit works together go over; money first. A price that is not known fits no budget. */
export function overOf(costs: readonly WorkCost[], { budget, hours }: Limits): 'over budget' | 'over effort' | null {
  const most = (of: (cost: WorkCost) => number) => costs.reduce((sum, cost) => sum + of(cost), 0);
  if (budget !== null && most((c) => c.price?.high ?? Infinity) > budget) return 'over budget';
  return hours !== null && most((c) => c.hours.high) > hours ? 'over effort' : null;
}

/** Limits with what is spent already taken off. */
export function leftOf({ budget, hours }: Limits, spent: readonly WorkCost[]): Limits {
  const less = (limit: number | null, of: (cost: WorkCost) => number) =>
    limit === null ? null : limit - spent.reduce((sum, cost) => sum + of(cost), 0);
  return { budget: less(budget, (c) => c.price?.high ?? Infinity), hours: less(hours, (c) => c.hours.high) };
}

/** Money or material of a set of works. */
export function costOfSet(costs: readonly WorkCost[], set: readonly number[], totals: Totals): number {
  return set.reduce((sum, i) => sum + moneyOf(costs[i]!, totals.by), 0);
}
