import { describe, expect, it } from 'vitest';
import { rules } from '../../src/rules/index.ts';
import { ruleIds } from '../../src/rules/rule-ids.ts';
import { ruleWords } from '../../src/words/rules/index.ts';
import { isTerm } from '../../src/words/terms.ts';
import { type Reason, reasonsOfRules } from './reasons-of-rules.ts';

const reasons = reasonsOfRules();

it('has a record for each name, once, in the reading order, and no record without a name', () => {
  expect(rules.map((r) => r.id)).toEqual([...ruleIds]);
  expect(new Set(ruleIds).size).toBe(ruleIds.length);
});

it('has words for each rule and for nothing else', () => {
  expect(Object.keys(ruleWords).sort()).toEqual([...ruleIds].sort());
});

it('can read the reasons of each rule off its source, and every key is one of known texts', () => {
  const unread = ruleIds.filter((id) => (reasons.get(id) ?? []).length === 0);
  expect(unread).toEqual([]);
  expect([...reasons.values()].flat().filter((r) => r.keys.length === 0)).toEqual([]);
});

describe.each(ruleIds)('%s', (id) => {
  const words = ruleWords[id]!;
  const mine = reasons.get(id) ?? [];
  const used = [...new Set(mine.flatMap((r) => r.keys))].sort();

  it('has a sentence for each reason, and no sentence that nothing gives', () => {
    expect(used).toEqual(Object.keys(words.because).sort());
  });

  it('fills every name in every sentence', () => {
    expect(mine.flatMap((r) => unfilled(r, words.because))).toEqual([]);
    const notMet = mine.filter((r) => r.as === 'because' && r.is === 'not met');
    for (const template of [words.failTitle, words.remedy]) {
      expect(notMet.flatMap((r) => names(template).filter((n) => n !== 'at' && !r.values.includes(n)))).toEqual([]);
    }
  });

  it('has a title and grounds that stand without a place', () => {
    expect([words.title, words.why, words.met].flatMap(names)).toEqual([]);
  });

  it('names only terms that both dictionaries hold', () => {
    const { because, tools: _tools, ...others } = words;
    const all = [...Object.values(others), ...Object.values(because)] as readonly string[];
    expect(all.flatMap(terms).filter((t) => !isTerm(t.toLowerCase()))).toEqual([]);
  });

  it('says where its condition comes from', () => {
    const { source } = rules.find((r) => r.id === id)!;
    expect(source.document.length).toBeGreaterThan(3);
    if (source.provenance !== 'ours') expect(source.document).not.toMatch(/^ours/);
  });
});

function unfilled(r: Reason, because: Readonly<Record<string, string>>): readonly string[] {
  return r.keys.flatMap((key) =>
    names(because[key] ?? '')
      .filter((n) => n !== 'at' && !r.values.includes(n))
      .map((n) => `${r.place}: '${key}' gives no {${n}}`),
  );
}

/** `{lengthM}` → lengthM. */
const names = (template: string): readonly string[] => [...template.matchAll(/\{(\w+)\}/g)].map((m) => m[1]!);
/** `[electrode]` → electrode. */
const terms = (template: string): readonly string[] => [...template.matchAll(/\[([^\][{}]+)\]/g)].map((m) => m[1]!);
