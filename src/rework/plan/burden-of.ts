import type { Interval } from '../../units/interval.ts';
import type { Remaining, WorkCost } from '../work.ts';

/**
 * What the order weighs by; ours, stated wherever an order is printed. A hazard outweighs ten defects, a defect ten pieces of
 * advice. Without prices a rod is taken as much as three metres of conductor and a joint as one; a length that nobody knows, or
 * whose end nobody knows, as ten metres more than its least.
 */
export const weights = { hazard: 100, defect: 10, advice: 1, rodM: 3, jointM: 1, unknownM: 10 } as const;

export type WeighedBy = 'price' | 'material';

/** What all works together cost, so that money and hours can be added as shares. */
export interface Totals {
  readonly by: WeighedBy;
  readonly cost: number;
  readonly hours: number;
}

/** By price where every work has one, else by material. */
export function totalsOf(costs: readonly WorkCost[]): Totals {
  const by = costs.length > 0 && costs.every((c) => c.price !== null) ? 'price' : 'material';
  const total = (of: (c: WorkCost) => number) => costs.reduce((sum, c) => sum + of(c), 0);
  return { by, cost: total((c) => moneyOf(c, by)), hours: total((c) => middleOf(c.hours)) };
}

/** Money, or material in metres of conductor. */
export function moneyOf(cost: WorkCost, by: WeighedBy): number {
  if (by === 'price') return middleOf(cost.price!);
  return lengthOf(cost.conductorM) + weights.rodM * cost.rods + weights.jointM * cost.joints;
}

function lengthOf({ low, high }: Interval): number {
  return Number.isFinite(high) ? (low + high) / 2 : low + weights.unknownM;
}

/** Share of the money of all works and share of their hours, which weigh alike; from 0 to 2. */
export function burdenOf(cost: WorkCost, totals: Totals): number {
  const share = (part: number, whole: number) => (whole > 0 ? part / whole : 0);
  return share(moneyOf(cost, totals.by), totals.cost) + share(middleOf(cost.hours), totals.hours);
}

/** How much better what remains is. */
export function pointsOf(before: Remaining, after: Remaining): number {
  return (
    weights.hazard * (before.hazards - after.hazards) +
    weights.defect * (before.defects - after.defects) +
    weights.advice * (before.advices - after.advices)
  );
}

/** Of what has no end (`over 20 ft`) twice its least. */
export function middleOf({ low, high }: Interval): number {
  return Number.isFinite(high) ? (low + high) / 2 : 2 * low;
}
