import type { Facts } from '../facts/facts.ts';
import { isAmerican } from '../site/is-american.ts';
import type { Region } from '../site/site.ts';
import { type Asked, ask, type Faults } from './asked.ts';
import { setAsks, siteSets } from './code-sets/site-sets.ts';
import { type FactsInSet, factsInSet } from './facts-in-set.ts';
import { familyIn } from './family-in.ts';
import { rules } from './index.ts';
import type { CodeSet, Rule } from './rule.ts';

/**
 * Every rule for each of the site's code sets that asks it, in the order of the pack. A rule that is asked everywhere stands
 * once where it says the same in all of them; where it does not (another family, another verdict), once for each set.
 */
export function askSets(facts: Facts, faults: Faults, isAsked: (rule: Rule) => boolean): readonly Asked[] {
  const sets = siteSets(facts.header).map((set) => factsInSet(facts, set));
  return rules.filter(isAsked).flatMap((rule) => askRule(rule, sets, faults));
}

function askRule(rule: Rule, all: readonly FactsInSet[], faults: Faults): readonly Asked[] {
  const sets = all.filter(({ set }) => setAsks(rule, set));
  const asked: Asked[] = [];
  for (const one of sets) {
    const before = asked.find((a) => holdsIn(a, one.set));
    asked.push(before === undefined ? ask(rule, one, faults) : inSet(before, one.set, before.codeSet));
  }
  const [first] = asked;
  if (first === undefined || all.length === 1) return asked;
  const isEverywhere = rule.codeSets.includes('any') && sets.length === all.length;
  if (isEverywhere && asked.every((a) => saysSame(a, first))) return [inSet(first, first.set, 'any')];
  return asked.map((a) => inSet(a, a.set, a.set === 'unknown' ? 'us' : a.set));
}

/** Whether a rule would read the same of another region, and so say the same there. */
function holdsIn({ reads, set }: Asked, other: Region): boolean {
  return reads === 'nothing' || (reads === 'isAmerican' && isAmerican(set) === isAmerican(other));
}

/** The same verdicts in another set. */
function inSet({ rule, verdicts, reads, adopted }: Asked, set: Region, codeSet: CodeSet): Asked {
  return { rule, set, codeSet, family: familyIn(rule, set), verdicts, reads, adopted };
}

function saysSame(a: Asked, b: Asked): boolean {
  return a.family === b.family && (a.verdicts === b.verdicts || isSame(a.verdicts, b.verdicts));
}

/** Whether two plain values (texts, figures, lists, records) say the same. */
function isSame(a: unknown, b: unknown): boolean {
  if (a === null || b === null || typeof a !== 'object' || typeof b !== 'object') return Object.is(a, b);
  const keys = Object.keys(a) as (keyof object)[];
  return keys.length === Object.keys(b).length && keys.every((key) => isSame(a[key], b[key]));
}
