import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ruleIds } from '../../src/rules/rule-ids.ts';
import { limitGaps, type Outcome, outcomeGaps, outcomes } from './every-outcome.ts';
import type { Heard } from './heard.ts';
import { type Reason, reasonsOfRules } from './reasons-of-rules.ts';

const folder = import.meta.dirname;
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.test.ts'));

/** What a test file claims of a rule: the id, and the outcomes that it says cannot arise. */
interface Claim {
  readonly id: string;
  readonly file: string;
  readonly excused: readonly Outcome[];
}

const claims = files.flatMap((file): readonly Claim[] => {
  const text = readFileSync(join(folder, file), 'utf8');
  const named = /const rule = '([a-z0-9-]+)'/.exec(text)?.[1];
  const ids = new Map([...text.matchAll(/^const (\w+) = '([a-z0-9-]+)';$/gm)].map(([, name, id]) => [name!, id!]));
  return [...text.matchAll(/^everyOutcome\(([\w'-]+)(?:, \{([^}]*)\})?\);$/gm)].map(([, first, excuses = '']) => ({
    id: first!.startsWith("'") ? first!.slice(1, -1) : (ids.get(first!) ?? named ?? first!),
    file,
    excused: outcomes.filter((o) => new RegExp(`(?:^|[{,\\s])'?${o}'?: `).test(excuses)),
  }));
});

it('every rule is held to its outcomes in one test file, and no other name is', () => {
  expect(claims.map((c) => c.id).sort()).toEqual([...ruleIds].sort());
});

/** Outcomes that the source of a rule gives by name, wherever it gets them from. */
const reasons = reasonsOfRules();
const given = (id: string): ReadonlySet<string> =>
  new Set((reasons.get(id as never) ?? []).flatMap((r: Reason) => (r.is === null || r.as === 'settle' ? [] : [r.is])));

/** The source names the outcome, and this rule still never gives it: a function that it shares, or what it then turns it into. */
const sharedOnly: Readonly<Record<string, string>> = {
  'panel-to-rod-conductor': 'sizedElsewhere takes its doubts out',
  'path-minimum-area': 'a doubt of sectionVerdict becomes not applicable',
};

it.each(claims.filter((c) => c.excused.length > 0).map((c) => [c.id, c] as const))(
  '%s: what is said not to arise is not in its source',
  (id, { excused }) => {
    const wrong = excused.filter((o) => given(id).has(o));
    if (Object.hasOwn(sharedOnly, id)) expect(wrong).not.toEqual([]);
    else expect(wrong).toEqual([]);
  },
);

describe('what holds a rule to its outcomes', () => {
  const heard = (outcome: Outcome, value: number, length: string, limit = 2): Heard => ({
    rule: 'x',
    outcome,
    line: `${outcome} a: why`,
    measured: { value, limit },
    text: `length: ${length}`,
  });
  const all = outcomes.map((o) => heard(o, 1, '1 m'));
  const source = outcomes.map((o) => `'${o} a: why'`).join(' ');
  const limit = { key: 'runLengthM', value: 2, sense: 'least' } as const;

  it('misses an outcome that no test got, one whose line nobody typed, and an excuse that is not true', () => {
    expect(outcomeGaps(all, source, {})).toEqual([]);
    expect(outcomeGaps(all.slice(1), source, {})).toEqual(['met: never']);
    expect(outcomeGaps(all, source.replace('not met a: why', ''), {})).toEqual([
      'not met: not typed, such as "not met a: why"',
    ]);
    expect(outcomeGaps(all, source, { 'cannot tell': 'never' })).toEqual([
      'cannot tell: said not to arise, and it did',
    ]);
    expect(outcomeGaps(all.slice(1), source, { met: 'nobody can' })).toEqual([]);
  });

  it('misses a side of a limit, a unit system, and what is far from the limit', () => {
    const [within, beyond] = [heard('met', 2.05, '2.05 m'), heard('not met', 1.95, '1.95 m')];
    const [inFeet, under] = [heard('met', 2.0117, '6.6 ft'), heard('not met', 1.9507, '6.4 ft')];
    expect(limitGaps([limit], [within, beyond, inFeet, under], {})).toEqual([]);
    expect(limitGaps([limit], [within, beyond, inFeet], {})).toEqual([
      'runLengthM 2: no case close by that is not met, us',
    ]);
    expect(limitGaps([limit], [within, heard('not met', 1, '1 m'), inFeet, under], {})).toEqual([
      'runLengthM 2: no case close by that is not met, si',
    ]);
    expect(limitGaps([limit], [heard('met', 2.05, '2.05 m', 3), beyond, inFeet, under], {})).toEqual([]);
    expect(limitGaps([limit], [within, heard('not met', 1.95, '1.95 m', 3), inFeet, under], {})).toEqual([
      'runLengthM 2: no case close by that is not met, si',
    ]);
    expect(limitGaps([limit], [within, beyond, inFeet, under], { limits: 'why' })).toEqual([
      'limits: excused, and nothing is missing',
    ]);
  });
});
