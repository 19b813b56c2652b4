import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';

const body = readFileSync(join(import.meta.dirname, 'one-site.site.yaml'), 'utf8');
const table = readFileSync(join(import.meta.dirname, 'verdict-tables.tsv'), 'utf8').trimEnd().split('\n');

/** How the one site is asked, column by column. */
const heads = {
  us: 'region: us, supply: us-grounded',
  'iec tt': 'region: iec, supply: tt',
  'uk tn-s': 'region: uk, supply: tn-s',
  'uk tn-c-s': 'region: uk, supply: tn-c-s',
} as const;

function outcomesOf(head: string): ReadonlyMap<string, string> {
  const text = `site: {name: One site, ${head}, units: m, service: panel, without: [telephone, network, cable tv]}\n${body}`;
  const { site } = readSite(text, 'one.site.yaml');
  const { study, faults } = runStudy(site!, { state: null, version: '0', checksum: '', date: null });
  expect(faults).toEqual([]);
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

describe('one site under the conditions of several countries', () => {
  it('has its columns', () => {
    expect(table[0]!.split('\t')).toEqual(['rule', ...columns]);
  });

  it.each(table.slice(1).map((line) => line.split('\t') as [string, ...string[]]))('%s', (rule, ...expected) => {
    const got = columns.map((name) => found.get(name)!.get(rule)!.replace(/^not applicable,.*/, '-'));
    expect(got).toEqual(expected);
  });

  it('has nothing of code or practice that is not met beyond the table', () => {
    const known = new Set(table.map((line) => line.split('\t')[0]));
    for (const name of columns) {
      const beyond = [...found.get(name)!].filter(([rule, is]) => /^not met, (?:code|practice)/.test(is) && !known.has(rule));
      expect(beyond, name).toEqual([]);
    }
  });
});
