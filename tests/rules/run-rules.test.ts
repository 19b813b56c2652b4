import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Facts } from '../../src/facts/facts.ts';
import { rules } from '../../src/rules/index.ts';
import type { Rule, Verdict } from '../../src/rules/rule.ts';
import type { RuleId } from '../../src/rules/rule-ids.ts';
import { runRules } from '../../src/rules/run-rules.ts';
import type { Agreement, Region } from '../../src/site/site.ts';

/** What each rule of the pack is made to say; a rule that is not named says that it is not applicable. */
const script = vi.hoisted(() => new Map<string, (facts: Facts) => readonly unknown[]>());

vi.mock('../../src/rules/index.ts', async (original) => {
  const { rules: pack } = await original<{ rules: readonly Rule[] }>();
  const { ruleWords } = await import('../../src/words/rules/index.ts');
  const silent = (r: Rule) => [{ is: 'not applicable', because: { key: Object.keys(ruleWords[r.id]!.because)[0]! } }];
  return { rules: pack.map((r) => ({ ...r, check: (facts: Facts) => script.get(r.id)?.(facts) ?? silent(r) })) };
});

const speech = { terms: 'us', unitsFirst: 'us' } as const;
const says = (id: RuleId, ...verdicts: readonly Verdict[]) => script.set(id, () => verdicts);
const notMet = (at: readonly string[], key: string, more: object = {}): Verdict => ({
  is: 'not met',
  at,
  because: { key },
  ...more,
});

function run(region: Region = 'us', agreed: readonly Agreement[] = []) {
  return runRules({ header: { region, agreed } } as unknown as Facts, speech);
}

beforeEach(() => script.clear());

describe('order', () => {
  it('puts what is not met before what cannot be told before what is met, then the worse, then the order of the pack', () => {
    says('galvanic-pair', notMet(['j1'], 'apart'));
    says('rod-length-us', notMet(['E2'], 'short'), { is: 'met', at: ['E1'], because: { key: 'long enough' } });
    says('mast-grounded', notMet(['tower'], 'no way'));
    says('arrester-bonded', notMet(['a1'], 'floating'), {
      is: 'cannot tell',
      at: ['a2'],
      because: { key: 'perhaps' },
      settle: { key: 'look' },
    });
    expect(run().findings.map((f) => f.id)).toEqual([
      'mast-grounded:tower',
      'arrester-bonded:a1',
      'rod-length-us:E2',
      'galvanic-pair:j1',
      'arrester-bonded:a2',
      'rod-length-us:E1',
    ]);
  });

  it('puts the doubt that everything hangs on before what is certain, unless it is agreed to stand', () => {
    says('service-electrode-known', {
      is: 'cannot tell',
      at: [],
      because: { key: 'service unknown' },
      settle: { key: 'find service' },
    });
    says('mast-grounded', notMet(['tower'], 'no way'));
    const ids = (agreed: readonly Agreement[]) => run('us', agreed).findings.map((f) => f.rule);
    expect(ids([])).toEqual(['service-electrode-known', 'mast-grounded']);
    const stands = { rule: 'service-electrode-known', at: null, reason: 'rented', by: null, date: null };
    expect(ids([stands])).toEqual(['mast-grounded', 'service-electrode-known']);
  });

  it('puts places of one rule in the order of their code points, whatever order the rule gives them in', () => {
    says('mast-grounded', ...['b', 'ä', 'a', 'B', 'a10', 'a2'].map((id) => notMet([id], 'no way')));
    const once = run().findings.map((f) => f.at[0]);
    expect(once).toEqual(['B', 'a', 'a10', 'a2', 'b', 'ä']);
    says('mast-grounded', ...['a2', 'a10', 'B', 'a', 'ä', 'b'].map((id) => notMet([id], 'no way')));
    expect(run().findings.map((f) => f.at[0])).toEqual(once);
  });

  it('puts what a place is worse by before the rule’s usual', () => {
    says('condition-sound', notMet(['c1'], 'loose'), notMet(['c2'], 'open', { severity: 'hazard' }));
    expect(run().findings.map((f) => [f.at[0], f.severity])).toEqual([
      ['c2', 'hazard'],
      ['c1', 'defect'],
    ]);
  });
});

describe('a rule that throws', () => {
  const fault = new Error('broken');
  beforeEach(() => {
    script.set('mast-grounded', () => {
      throw fault;
    });
    says('arrester-bonded', notMet(['a1'], 'floating'));
  });

  it('becomes cannot tell, with a sentence, and is reported as our fault', () => {
    const { findings, conditions, faults } = run();
    expect(faults).toEqual([{ rule: 'mast-grounded', error: fault }]);
    const finding = findings.find((f) => f.rule === 'mast-grounded')!;
    expect([finding.outcome, finding.at]).toEqual(['cannot tell', []]);
    expect(finding.because.text).toMatch(/error of the program/);
    expect(conditions.find((c) => c.rule === 'mast-grounded')?.outcome).toBe('cannot tell');
  });

  it('does not keep the others from being run', () => {
    expect(run().findings.some((f) => f.id === 'arrester-bonded:a1')).toBe(true);
  });
});

describe('of the region whose set is asked', () => {
  const all: readonly Region[] = ['us', 'ca', 'iec', 'uk', 'au'];
  const header = { region: 'us', codeSets: all, agreed: [] };
  /** For which regions a rule was asked that reads what `read` reads. */
  const askedFor = (read: (facts: Facts) => unknown): readonly unknown[] => {
    const seen: unknown[] = [];
    script.set('arrester-bonded', (facts) => {
      seen.push(read(facts));
      return [notMet(['a1'], 'floating')];
    });
    runRules({ header } as unknown as Facts, speech);
    return seen;
  };

  it('a rule that reads nothing is asked once for all', () => {
    expect(askedFor(() => 'asked')).toEqual(['asked']);
  });

  it('one that asks whether it is American is asked once for each answer', () => {
    expect(askedFor(({ isAmerican }) => isAmerican)).toEqual([true, false]);
  });

  it('one that reads the region is asked for each, and reads that one', () => {
    expect(askedFor((facts) => facts.header.region)).toEqual(all);
    const readsBoth = (facts: Facts) => (facts.isAmerican ? 'American' : facts.header.region);
    expect(askedFor(readsBoth)).toEqual(['American', 'iec', 'uk', 'au']);
  });
});

describe('regions', () => {
  const asked = (region: Region) => {
    const outcomes = run(region).conditions;
    const asleep = outcomes.filter((c) => /^Asked in/.test(c.because));
    return new Set(
      outcomes.filter((c) => !asleep.includes(c)).flatMap((c) => rules.find((r) => r.id === c.rule)!.codeSets),
    );
  };

  it.each([
    ['us', ['us'], ['uk']],
    ['ca', ['ca'], ['uk']],
    ['iec', ['iec'], ['us', 'ca', 'uk']],
    ['uk', ['iec', 'uk'], ['us', 'ca']],
    ['au', ['au'], ['iec', 'uk']],
    ['unknown', ['us'], ['uk']],
  ] as const)('%s is asked its own sets and what is asked anywhere', (region, own, others) => {
    const sets = asked(region);
    for (const set of ['any', ...own] as const) expect(sets).toContain(set);
    const foreign = run(region).conditions.filter((c) => {
      const { codeSets } = rules.find((r) => r.id === c.rule)!;
      return codeSets.every((set) => (others as readonly string[]).includes(set));
    });
    expect(foreign.length).toBeGreaterThan(0);
    for (const c of foreign) expect([c.rule, c.outcome]).toEqual([c.rule, 'not applicable']);
  });

  it('shows every rule of the pack once, in its order, wherever the site is', () => {
    for (const region of ['us', 'ca', 'iec', 'uk', 'au', 'unknown'] as const) {
      expect(run(region).conditions.map((c) => c.rule)).toEqual(rules.map((r) => r.id));
    }
  });
});

describe('conditions', () => {
  it('count places, and are worth their worst one', () => {
    says(
      'rod-length-us',
      notMet(['E1'], 'short'),
      { is: 'cannot tell', at: ['E2'], because: { key: 'length unknown' }, settle: { key: 'measure it' } },
      { is: 'met', at: ['E3'], because: { key: 'long enough' } },
    );
    const condition = run().conditions.find((c) => c.rule === 'rod-length-us')!;
    expect([condition.outcome, condition.notMet, condition.cannotTell, condition.met]).toEqual(['not met', 1, 1, 1]);
  });

  it('say that a section was not looked at, and hold no finding for it', () => {
    says('rod-length-us', { is: 'not looked at', because: { key: 'none' } });
    const { conditions, findings } = run();
    expect(conditions.find((c) => c.rule === 'rod-length-us')?.outcome).toBe('not looked at');
    expect(findings).toEqual([]);
  });
});

describe('what the owner has agreed to', () => {
  const agreement = (at: string | null): Agreement => ({
    rule: 'rod-length-us',
    at,
    reason: 'rock',
    by: 'owner',
    date: '2026-01-02',
  });

  it('is marked at the place named, and stands behind what is not agreed', () => {
    says('rod-length-us', notMet(['E1'], 'short'), notMet(['E2'], 'short'));
    expect(run('us', [agreement('E1')]).findings.map((f) => [f.id, f.agreed?.by ?? null])).toEqual([
      ['rod-length-us:E2', null],
      ['rod-length-us:E1', 'owner'],
    ]);
  });

  it('is marked everywhere where no place is named', () => {
    says('rod-length-us', notMet(['E1'], 'short'), notMet(['E2'], 'short'));
    expect(run('us', [agreement(null)]).findings.map((f) => f.agreed?.reason)).toEqual(['rock', 'rock']);
  });
});

describe('a figure against its limit', () => {
  it('is said in both systems with the limit beside it', () => {
    const measured = {
      key: 'rodLengthM',
      value: { low: 1.8288, high: 1.8288 },
      limit: 2.4384,
      sense: 'least',
    } as const;
    says('rod-length-us', notMet(['E1'], 'short', { measured }));
    const [finding] = run().findings;
    expect(finding!.measured).toEqual({
      value: { low: 1.8288, high: 1.8288 },
      unit: 'm',
      limit: 2.4384,
      text: '6 ft (1.83 m); at least 8 ft (2.44 m) is asked',
    });
  });
});
