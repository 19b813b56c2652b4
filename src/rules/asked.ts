import type { Facts } from '../facts/facts.ts';
import type { Region } from '../site/site.ts';
import { adoptedYear } from './code-sets/adopted-edition.ts';
import { codeSetOf } from './code-sets/site-sets.ts';
import type { FactsInSet, RegionRead } from './facts-in-set.ts';
import { familyIn } from './family-in.ts';
import { gatherDoubts } from './gather-doubts.ts';
import { type CodeSet, type Family, placeOf, type Rule, type Verdict } from './rule.ts';
import { faultKey } from './rule-sentence.ts';

/** One rule asked for one code set of the site. */
export interface Asked {
  readonly rule: Rule;
  readonly set: Region;
  /** What its findings carry: 'any' where it is asked everywhere and says the same in all sets of the site. */
  readonly codeSet: CodeSet;
  readonly family: Family;
  /** In the order of their places. */
  readonly verdicts: readonly Verdict[];
  /** What it read of the region whose set is asked: where that differs it may say something else. */
  readonly reads: RegionRead;
  /** The adopted edition is older than the clause, so that nobody asks it. */
  readonly adopted: { readonly year: number; readonly since: number } | null;
}

export type Faults = { readonly rule: string; readonly error: unknown }[];

/** Asks a rule for a set. One that throws becomes 'cannot tell' and is noted as our fault. */
export function ask(rule: Rule, { set, facts, seen }: FactsInSet, faults: Faults): Asked {
  const adopted = notYet(rule, facts);
  seen.read = 'nothing';
  const verdicts = adopted === null ? verdictsOf(rule, facts, faults) : [];
  const family = familyIn(rule, set);
  return {
    rule,
    set,
    codeSet: codeSetOf(rule, set),
    family,
    verdicts,
    reads: seen.read,
    adopted,
  };
}

function notYet({ since, source }: Rule, { header }: Facts): Asked['adopted'] {
  if (since === undefined) return null;
  const year = adoptedYear(header, source.document);
  return year === null || year >= since ? null : { year, since };
}

function verdictsOf(rule: Rule, facts: Facts, faults: Faults): readonly Verdict[] {
  try {
    return byPlace(gatherDoubts(rule.check(facts)));
  } catch (error) {
    faults.push({ rule: rule.id, error });
    const because = { key: faultKey };
    return [{ is: 'cannot tell', at: [], because, settle: because }];
  }
}

/** So that findings, whose ids begin alike, come out in the order of their ids; most rules go through facts in order. */
function byPlace(verdicts: readonly Verdict[]): readonly Verdict[] {
  return isInOrder(verdicts) ? verdicts : [...verdicts].sort(comparePlaces);
}

function isInOrder(verdicts: readonly Verdict[]): boolean {
  let before = '';
  for (const v of verdicts) {
    const place = placeOf(v);
    if (place < before) return false;
    before = place;
  }
  return true;
}

function comparePlaces(a: Verdict, b: Verdict): number {
  const [here, there] = [placeOf(a), placeOf(b)];
  if (here < there) return -1;
  return here === there ? 0 : 1;
}
