import type { StudyPrices } from '../../study/study.ts';
import { add, exact, type Interval, mul } from '../../units/interval.ts';
import type { Material } from '../work.ts';
import { labourPrice } from './hours-of.ts';
import { unitPrice } from './price-lines.ts';

/** What the things come to that have a price, hours included where the file has a rate; what has none is left out. */
export function pricedPart(materials: readonly Material[], hours: Interval, prices: StudyPrices): Interval {
  const known = materials.flatMap((m) => {
    const unit = unitPrice(m, prices);
    return unit === null ? [] : [mul(unit, m.count)];
  });
  return [...known, labourPrice(hours, prices) ?? exact(0)].reduce(add, exact(0));
}
