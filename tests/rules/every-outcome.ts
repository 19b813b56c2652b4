import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { rules } from '../../src/rules/index.ts';
import type { Limit } from '../../src/rules/rule.ts';
import type { RuleId } from '../../src/rules/rule-ids.ts';
import { type Heard, heardIn } from './heard.ts';
import { systemsOf, typedNear } from './systems-of.ts';

export const outcomes = ['met', 'not met', 'cannot tell', 'not applicable'] as const;
export type Outcome = (typeof outcomes)[number];

/** Why an outcome cannot arise, or why a threshold has no case on each side in both unit systems; a sentence each. */
export type Excuses = Partial<Record<Outcome | 'limits', string>>;

/**
 * Stands once for each rule, after the tests of it and in their file. Fails unless these tests got each outcome from the rule,
 * with its line typed by hand in the file, and a case close by each of its limits, on either side, in either unit system.
 */
export function everyOutcome(id: RuleId, excuses: Excuses = {}): void {
  it(`${id}: each outcome is tested, and each side of its thresholds in both unit systems`, () => {
    const file = expect.getState().testPath!;
    const heard = heardIn(file, id);
    const { limits = [] } = rules.find((r) => r.id === id)!;
    const source = readFileSync(file, 'utf8');
    expect([...outcomeGaps(heard, source, excuses), ...limitGaps(limits, heard, excuses)]).toEqual([]);
  });
}

export function outcomeGaps(heard: readonly Heard[], source: string, excuses: Excuses): readonly string[] {
  return outcomes.flatMap((o) => {
    const got = heard.filter((h) => h.outcome === o);
    if (excuses[o] !== undefined) return got.length === 0 ? [] : [`${o}: said not to arise, and it did`];
    if (got.length === 0) return [`${o}: never`];
    const isTyped = got.some((h) => (h.line === null ? source.includes(`'${o}`) : source.includes(h.line)));
    return isTyped || o === 'not applicable' ? [] : [`${o}: not typed, such as "${got[0]!.line}"`];
  });
}

export function limitGaps(limits: readonly Limit[], heard: readonly Heard[], excuses: Excuses): readonly string[] {
  const gaps = limits.flatMap((limit) => sideGaps(limit, heard));
  if (excuses.limits === undefined) return gaps;
  return gaps.length > 0 ? [] : ['limits: excused, and nothing is missing'];
}

function sideGaps(limit: Limit, heard: readonly Heard[]): readonly string[] {
  const near = heard.flatMap((h) => nearOf(limit, h));
  const systems = isLength(limit.key) ? (['us', 'si'] as const) : (['any'] as const);
  const sides = ['met', 'not met'] as const;
  return systems.flatMap((system) =>
    sides
      .filter((side) => !near.some((n) => n.side === side && (system === 'any' ? n.isNumber : n.systems.has(system))))
      .map((side) => `${limit.of ?? limit.key} ${limit.value}: no case close by that is ${side}, ${system}`),
  );
}

const isLength = (key: string) => /M2?$/.test(key);

function nearOf({ value: limit, key, sense }: Limit, { outcome, measured, text }: Heard) {
  // a threshold above which a condition is asked at all has its near side where it is not asked
  if (outcome !== 'met' && outcome !== 'not met' && outcome !== 'not applicable') return [];
  const side = outcome === 'not met' ? outcome : 'met';
  const isOfLimit = measured !== null && Math.abs(measured.limit / limit - 1) <= 5e-3;
  // a rule that says no figure, or another of those that all have to be met, is taken at its word: one stands close by the limit
  if (measured === null || (!isOfLimit && side === 'met'))
    return [{ side, systems: typedNear(text, limit, key), isNumber: false }];
  if (!isOfLimit) return [];
  const value = single(measured.value);
  if (value === null) return [];
  const isWithin = sense === 'least' ? value >= limit * 0.997 : value <= limit * 1.003;
  if (isWithin !== (outcome === 'met')) return [];
  const { systems, gauge } = systemsOf(text, value, key);
  // the next size of the trade is as close as a gauge comes
  const share = gauge ? 0.65 : 0.1;
  const isNear =
    key === 'count' || key === 'bolts' ? Math.abs(value - limit) <= 1 : Math.abs(Math.log(value / limit)) <= share;
  return isNear ? [{ side, systems, isNumber: true }] : [];
}

function single(value: NonNullable<Heard['measured']>['value']): number | null {
  if (typeof value === 'number') return value;
  return value.high - value.low <= 1e-3 * Math.abs(value.high) ? value.low : null;
}
