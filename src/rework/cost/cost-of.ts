import type { Study } from '../../study/study.ts';
import { exact, type Interval, mul, sum } from '../../units/interval.ts';
import type { Work, WorkCost } from '../work.ts';
import { countsOf } from './counts-of.ts';
import { addPrices, hoursOf, labourPrice } from './hours-of.ts';
import { unitPrice } from './price-lines.ts';

/**
 * What a work costs by the owner's prices (materials, and hours where the file has a rate for them), in metres, rods, joints
 * and hours. A material without a price is named and makes the price null: nothing is invented. Without spare.
 */
export function costOf(work: Pick<Work, 'kind' | 'materials' | 'runs'>, study: Pick<Study, 'prices'>): WorkCost {
  const prices = study.prices ?? null;
  const { conductorM, rods, joints } = countsOf(work);
  const hours = hoursOf(work, prices);
  const rows = work.materials.filter((m) => m.count.high > 0);
  const each = rows.map((m) => ({ name: m.name, unit: prices === null ? null : unitPrice(m, prices), count: m.count }));
  const unpriced = [...new Set(each.filter((e) => e.unit === null).map((e) => e.name))].sort();
  const materials = sum(each.map(({ unit, count }) => (unit === null ? null : mul(unit, count))));
  return { price: priceOf(materials, hours, prices), unpriced, conductorM, rods, joints, hours };
}

function priceOf(materials: Interval | null, hours: Interval, prices: Study['prices'] | null): Interval | null {
  if (prices == null || prices.lines.length === 0) return null;
  const labour = labourPrice(hours, prices);
  return labour === null ? materials : addPrices(materials, labour);
}

/** Several works as one: prices, metres and hours added; null as soon as one price is. */
export function addCosts(costs: readonly WorkCost[]): WorkCost {
  return {
    price: sum(costs.map((c) => c.price)),
    unpriced: [...new Set(costs.flatMap((c) => c.unpriced))].sort(),
    conductorM: sum(costs.map((c) => c.conductorM)) ?? exact(0),
    rods: costs.reduce((n, c) => n + c.rods, 0),
    joints: costs.reduce((n, c) => n + c.joints, 0),
    hours: sum(costs.map((c) => c.hours)) ?? exact(0),
  };
}
