import type { StudyHours, StudyPrices } from '../../study/study.ts';
import { add, exact, type Interval, mul, sum } from '../../units/interval.ts';
import { nearName } from '../../units/near-name.ts';
import { footM } from '../../units/unit-table.ts';
import type { Work } from '../work.ts';
import { type Allowance, allowances, extraOf } from './allowances.ts';
import { type Counts, countsOf } from './counts-of.ts';

/**
 * Hours of one person for a work: what is driven, dug, run and joined times the allowance of each, and what the kind of work
 * takes beside. Rounded outwards to a quarter of an hour, which is finer than anybody knows them.
 */
export function hoursOf(work: Pick<Work, 'kind' | 'materials' | 'runs'>, prices: StudyPrices | null): Interval {
  const counts = countsOf(work);
  const extra = extraOf[work.kind];
  const total = sum([
    allowance('work', prices),
    ...timesOf(counts).map(([name, count]) => mul(count, allowance(name, prices))),
    extra === undefined || (extra === 'protector' && counts.protectors > 0) ? exact(0) : allowance(extra, prices),
  ])!;
  return { low: Math.floor(total.low * 4) / 4, high: Math.ceil(total.high * 4 - 1e-9) / 4 };
}

function timesOf(counts: Counts): readonly (readonly [Allowance, Interval])[] {
  return [
    ['rod', exact(counts.rods)],
    ['joint', exact(counts.joints)],
    ['trench', counts.buriedM],
    ['conductor', counts.inAirM],
    ['protector', exact(counts.protectors)],
  ];
}

/** Hours for each (for each metre of what is long): the owner's figure, else our own. */
export function allowance(name: Allowance, prices: StudyPrices | null): Interval {
  const own = ownHours(name, prices);
  if (own === null) return allowances[name];
  const unitM = own.per === 'ft' ? footM : 1;
  return { low: own.hours!.low / (own.perCount * unitM), high: own.hours!.high / (own.perCount * unitM) };
}

/** The owner's line that sets an allowance; null: ours holds. */
export function ownHours(name: Allowance, prices: StudyPrices | null): StudyHours | null {
  const isLong = name === 'trench' || name === 'conductor';
  const usable = (prices?.hours ?? []).filter((h) => h.hours !== null && (h.per !== 'each') === isLong);
  return usable.find((h) => nearName(h.name, [...names[name]]) !== null) ?? null;
}

/** Names that an owner may use. */
const names: Readonly<Record<Allowance, readonly string[]>> = {
  work: ['work', 'job', 'visit'],
  rod: ['rod', 'ground rod', 'earth rod'],
  joint: ['joint', 'clamp', 'weld', 'connection'],
  trench: ['trench', 'trenching', 'digging'],
  conductor: ['conductor', 'wire', 'cable'],
  protector: ['protector', 'arrester'],
  panel: ['panel', 'entry panel'],
  line: ['line', 'coax'],
  look: ['look', 'inspection'],
  day: ['day', "day's work"],
};

/** Cost of hours by the owner's rates, from the least to the greatest of them; null: the file has no rate for work. */
export function labourPrice(hours: Interval, prices: StudyPrices): Interval | null {
  const rates = labourRates(prices);
  if (rates.length === 0) return null;
  const day = allowance('day', prices);
  const perHour = rates.map(({ price, per }) =>
    per === 'hour' ? price! : { low: price!.low / day.high, high: price!.high / day.low },
  );
  const rate = { low: Math.min(...perHour.map((r) => r.low)), high: Math.max(...perHour.map((r) => r.high)) };
  return mul(hours, rate);
}

/** Lines of the prices that are what work costs. */
export function labourRates(prices: StudyPrices): StudyPrices['lines'] {
  return prices.lines.filter((l) => l.price !== null && (l.per === 'hour' || l.per === 'day'));
}

export function addPrices(a: Interval | null, b: Interval | null): Interval | null {
  return a === null || b === null ? null : add(a, b);
}
