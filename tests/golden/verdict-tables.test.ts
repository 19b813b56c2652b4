import { describe, expect, it } from 'vitest';
import { rules } from '../../src/rules/index.ts';
import { studyOf, tableOf } from './golden-study.ts';

const table = tableOf('verdict-tables.tsv');

/** How the one site is asked, column by column. */
const heads = {
  us: 'region: us, supply: us-grounded',
  'iec tt': 'region: iec, supply: tt',
  'uk tn-s': 'region: uk, supply: tn-s',
  'uk tn-c-s': 'region: uk, supply: tn-c-s',
} as const;

function outcomesOf(head: string): ReadonlyMap<string, string> {
  const study = studyOf(head);
  return new Map(
    study.conditions.map((c) => {
      const at = study.findings
        .filter((f) => f.rule === c.rule && f.outcome === c.outcome && c.outcome !== 'met')
        .flatMap((f) => f.at);
      return [c.rule, `${c.outcome}, ${c.family}${at.length === 0 ? '' : `: ${[...new Set(at)].sort().join(' ')}`}`];
    }),
  );
}

const columns = Object.keys(heads) as (keyof typeof heads)[];
const found = new Map(columns.map((name) => [name, outcomesOf(heads[name])]));
const known = new Set(table.map(([rule]) => rule));

describe('one site under the conditions of several countries', () => {
  it('has its columns', () => {
    expect(table[0]).toEqual(['rule', ...columns, 'why']);
  });

  it.each(table.slice(1).map(([rule, ...cells]) => [rule!, cells] as const))('%s', (rule, cells) => {
    const got = columns.map((name) => found.get(name)!.get(rule)!.replace(/^not applicable,.*/, '-'));
    expect(got).toEqual(cells.slice(0, columns.length));
  });

  it('has nothing that is not met or cannot be told beyond the table', () => {
    for (const name of columns) {
      const beyond = [...found.get(name)!].filter(([rule, is]) => /^(?:not met|cannot tell)/.test(is) && !known.has(rule));
      expect(beyond, name).toEqual([]);
    }
  });

  it('has each rule on what a strike does', () => {
    const strike = rules.filter((r) => r.family === 'strike').map((r) => r.id);
    expect(strike.filter((id) => !known.has(id))).toEqual([]);
  });

  it('says why wherever something is not met or cannot be told', () => {
    const bare = table.slice(1).filter(([, ...cells]) => /not met|cannot tell/.test(cells.join()) && cells.length === 4);
    expect(bare.map(([rule]) => rule)).toEqual([]);
  });
});
