import { addMaterials } from '../rework/cost/counts-of.ts';
import { labourRates } from '../rework/cost/hours-of.ts';
import { pricedPart } from '../rework/cost/priced-part.ts';
import type { Remaining, Work, WorkCost } from '../rework/work.ts';
import { hoursText } from '../units/hours-text.ts';
import type { Interval } from '../units/interval.ts';
import { moneyText } from '../units/money-text.ts';
import { worksPageWords } from '../words/works-page-words.ts';
import { kindName, sayIn } from './page-context.ts';
import { tape, type WorksContext } from './works-context.ts';

const words = worksPageWords.list;

/** Whether the file has prices at all. */
export function hasPrices({ plan }: WorksContext): boolean {
  return (plan.before.prices?.lines ?? []).length > 0;
}

export function currencyOf({ plan }: WorksContext): string | null {
  return plan.before.prices?.currency ?? null;
}

/** Price, or which prices are missing; without prices the material. */
export function costText(page: WorksContext, cost: WorkCost): string {
  if (!hasPrices(page)) return materialText(page, cost);
  if (cost.price?.high === 0) return words.nothingToBuy;
  return moneyText(cost.price, currencyOf(page)) ?? sayIn(page, words.unpriced, { list: unpricedOf(page, cost) });
}

/** Names of what has no price, as the page calls it. */
export function unpricedOf(page: WorksContext, { unpriced }: WorkCost): readonly string[] {
  return unpriced.map((name) => kindName(page, name));
}

/** Metres, rods and joints; what there is none of is left out. */
export function materialText(page: WorksContext, { conductorM, rods, joints }: WorkCost): string {
  const parts = [
    ...(conductorM.high > 0 ? [conductorText(page, conductorM)] : []),
    ...(rods > 0 ? [sayIn(page, words.rods, { rods })] : []),
    ...(joints > 0 ? [sayIn(page, words.joints, { joints })] : []),
  ];
  return parts.length === 0 ? words.noMaterial : parts.join(', ');
}

function conductorText(page: WorksContext, conductorM: Interval): string {
  if (conductorM.low <= 0 && conductorM.high === Infinity) return words.conductorUnknown;
  return sayIn(page, words.conductor, { length: tape(page, conductorM) });
}

/** What several works come to: all of it, or what has a price and the names of what has none. */
export function totalText(page: WorksContext, works: readonly Work[], cost: WorkCost): string {
  const prices = page.plan.before.prices ?? null;
  if (prices === null || cost.price !== null || !hasPrices(page)) return costText(page, cost);
  const money = moneyText(pricedPart(addMaterials(works), cost.hours, prices), currencyOf(page))!;
  return sayIn(page, words.partly, { money, n: cost.unpriced.length });
}

export function hoursOfCost({ hours }: WorkCost): string {
  return hoursText(hours);
}

export function countsText(page: WorksContext, { hazards, defects, advices, cannotTell }: Remaining, short = false) {
  return sayIn(page, short ? words.short : words.counts, { hazards, defects, advices, cannotTell });
}

/** Whether work is in the cost, and at which rate. */
export function labourNote(page: WorksContext): readonly string[] {
  if (!hasPrices(page)) return [words.noPrices];
  const rates = labourRates(page.plan.before.prices!).map((r) => r.typed);
  return [rates.length === 0 ? words.labourOut : sayIn(page, words.labourIn, { rates: rates.join(', ') })];
}
