import { claimsOf } from '../claims.ts';
import { rule } from '../rule.ts';
import { readingsOfEarth } from './readings-of-earth.ts';

/** Ours: four tests within twelve months, each at least a month after the one before, so that they are of several seasons. */
const leastTests = 4;
const monthDays = 30;
const yearDays = 366;

export const seasonalTest = rule({
  id: 'seasonal-test',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-1004/6', edition: null, clause: 'tests over a year', provenance: 'read' },
  limits: [{ key: 'count', value: leastTests, sense: 'least' }],
  needs: ['header', 'sections', 'site'],
  check({ header, site }) {
    if (!claimsOf(header).military) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    if (site.soil?.known === 'measured') return [{ is: 'not applicable', because: { key: 'soil known' } }];
    const read = readingsOfEarth(site);
    const days = read.flatMap((r) => dayOf(r.date) ?? []).sort((a, b) => a - b);
    const at = read.map((r) => r.id).sort();
    const value = mostInAYear(days);
    const measured = { key: 'count', value, limit: leastTests, sense: 'least' } as const;
    if (value >= leastTests) return [{ is: 'met', at, because: { key: 'over a year' }, measured }];
    const isOpen = read.length >= leastTests && days.length < read.length;
    if (isOpen) return [{ is: 'cannot tell', at, because: { key: 'undated' }, settle: { key: 'find the date' } }];
    return [{ is: 'not met', at, because: { key: 'too few' }, measured }];
  },
});

/** From the first day on, each the next that is a month later, is the most that there can be. */
function mostInAYear(days: readonly number[]): number {
  return Math.max(0, ...days.map((first) => monthsApart(days.filter((d) => d >= first && d - first <= yearDays))));
}

function monthsApart(days: readonly number[]): number {
  let last = -Infinity;
  return days.filter((d) => {
    const counts = d - last >= monthDays;
    if (counts) last = d;
    return counts;
  }).length;
}

/** Days since 1970; a month or a year alone is no day. */
function dayOf(date: string | null): number | null {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date ?? '') ?? [];
  return year === undefined ? null : Date.UTC(Number(year), Number(month) - 1, Number(day)) / 86_400_000;
}
