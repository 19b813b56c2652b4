import type { Facts } from '../facts/facts.ts';
import type { Region } from '../site/site.ts';
import { once } from '../units/once.ts';
import { adoptedYear } from './code-sets/adopted-edition.ts';
import { codeSetOf } from './code-sets/site-sets.ts';
import { familyIn } from './family-in.ts';
import { gatherDoubts } from './gather-doubts.ts';
import type { CodeSet, Family, Rule, Verdict } from './rule.ts';
import { faultKey } from './rule-sentence.ts';

/** One rule asked for one code set of the site. */
export interface Asked {
  readonly rule: Rule;
  readonly set: Region;
  /** What its findings carry: 'any' where it is asked everywhere and says the same in all sets of the site. */
  readonly codeSet: CodeSet;
  readonly family: Family;
  readonly verdicts: readonly Verdict[];
  /** The rule read whose region is asked: in another set it may say something else. */
  readonly readsRegion: boolean;
  /** The adopted edition is older than the clause, so that nobody asks it. */
  readonly adopted: { readonly year: number; readonly since: number } | null;
}

export type Faults = { readonly rule: string; readonly error: unknown }[];

/** Asks a rule for a set. One that throws becomes 'cannot tell' and is noted as our fault. */
export function ask(rule: Rule, set: Region, facts: Facts, faults: Faults): Asked {
  const adopted = notYet(rule, facts);
  const region = { isRead: false };
  const verdicts = adopted === null ? verdictsOf(rule, handed(rule, set, facts, region), faults) : [];
  const family = familyIn(rule, set);
  return {
    rule,
    set,
    codeSet: codeSetOf(rule, set),
    family,
    verdicts,
    readsRegion: region.isRead,
    adopted,
  };
}

function notYet({ since, source }: Rule, { header }: Facts): Asked['adopted'] {
  if (since === undefined) return null;
  const year = adoptedYear(header, source.document);
  return year === null || year >= since ? null : { year, since };
}

function verdictsOf(rule: Rule, facts: object, faults: Faults): readonly Verdict[] {
  try {
    return gatherDoubts(rule.check(facts as never));
  } catch (error) {
    faults.push({ rule: rule.id, error });
    const because = { key: faultKey };
    return [{ is: 'cannot tell', at: [], because, settle: because }];
  }
}

/**
 * What the rule names, each worked out when the rule reads it: one that stops early costs nothing. The header names the
 * region whose set is asked, which on a site of several sets need not be the site's own.
 */
function handed(rule: Rule, set: Region, facts: Facts, region: { isRead: boolean }) {
  const header = once(() => headerOf(facts.header, set, region));
  const given = {};
  for (const name of rule.needs) {
    const get = name === 'header' ? header : () => facts[name];
    Object.defineProperty(given, name, { enumerable: true, get });
  }
  return given;
}

function headerOf(header: Facts['header'], set: Region, region: { isRead: boolean }): Facts['header'] {
  return Object.defineProperty({ ...header }, 'region', {
    enumerable: true,
    get() {
      region.isRead = true;
      return set;
    },
  });
}
