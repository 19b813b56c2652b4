import type { Facts } from '../facts/facts.ts';
import type { Region } from '../site/site.ts';
import { type Asked, ask, type Faults } from './asked.ts';
import { setAsks, siteSets } from './code-sets/site-sets.ts';
import { familyIn } from './family-in.ts';
import { rules } from './index.ts';
import type { CodeSet, Rule } from './rule.ts';

/**
 * Every rule for each of the site's code sets that asks it, in the order of the pack. A rule that is asked everywhere stands
 * once where it says the same in all of them; where it does not (another family, another verdict), once for each set.
 */
export function askSets(facts: Facts, faults: Faults, isAsked: (rule: Rule) => boolean): readonly Asked[] {
  return rules.filter(isAsked).flatMap((rule) => askRule(rule, facts, faults));
}

function askRule(rule: Rule, facts: Facts, faults: Faults): readonly Asked[] {
  const all = siteSets(facts.header);
  const sets = all.filter((set) => setAsks(rule, set));
  const [first] = sets;
  if (first === undefined) return [];
  const once = ask(rule, first, facts, faults);
  if (all.length === 1) return [once];
  const asked = sets.map((set) => again(once, set, facts, faults));
  const isEverywhere = rule.codeSets.includes('any') && sets.length === all.length;
  if (isEverywhere && asked.every((a) => saysSame(a, once))) return [inSet(once, once.set, 'any')];
  return asked.map((a) => inSet(a, a.set, a.set === 'unknown' ? 'us' : a.set));
}

/** The same verdicts in another set. */
function inSet({ rule, verdicts, readsRegion, adopted }: Asked, set: Region, codeSet: CodeSet): Asked {
  return { rule, set, codeSet, family: familyIn(rule, set), verdicts, readsRegion, adopted };
}

/** Only a rule that read the region can say something else in another set. */
function again(once: Asked, set: Region, facts: Facts, faults: Faults): Asked {
  if (set === once.set) return once;
  return once.readsRegion ? ask(once.rule, set, facts, faults) : inSet(once, set, once.codeSet);
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
