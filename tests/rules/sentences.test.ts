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

  it('names what is typed after each look: a field, a reading, or a part', () => {
    const settles = [...new Set(mine.filter((r) => r.as === 'settle').flatMap((r) => r.keys))];
    const unnamed = settles.filter((key) => !namesWhatIsTyped(words.because[key] ?? ''));
    expect(unnamed.filter((key) => !Object.hasOwn(nothingTyped, key))).toEqual([]);
  });

  it('fills every name in every sentence', () => {
    expect(mine.flatMap((r) => unfilled(r, words.because))).toEqual([]);
    const notMet = mine.filter((r) => r.as === 'because' && r.is === 'not met');
    for (const template of [words.failTitle, words.remedy, words.remedyAbroad ?? '']) {
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

/** Ways to settle after which nothing of what is there is typed, and why. */
const nothingTyped: Readonly<Record<string, string>> = {
  ask: 'the authority or an electrician decides, and the file stays as it is; or another conductor is laid',
  'ask device': 'what guards a supply is no part of the file',
  'look between the two': 'whether two supplies may stay apart is for an electrician to say',
  'compare it': 'the maker says what a metal stands of which no constants are printed; or copper is laid',
  'tape wiring bond': 'an installer reckons the distance for the length down to the bond, and this program does not',
};

/** `length:`, a list of fields, or a whole part, of which each section has its own form. */
function namesWhatIsTyped(template: string): boolean {
  const isPart = /\b(?:conductors?|rods?|stops?)\b|\[electrode\]/.test(template) && /\btype\b/i.test(template);
  return /`|\{fields\}|\{decidedBy\}/.test(template) || isPart;
}

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
