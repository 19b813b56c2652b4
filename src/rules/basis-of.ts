import type { Region, SiteHeader } from '../site/site.ts';
import { codeSetWords as words } from '../words/code-set-words.ts';
import { type Speech, say } from '../words/say.ts';
import type { Asked } from './asked.ts';
import { adoptedYear } from './code-sets/adopted-edition.ts';
import { homeOf, whichBindIn } from './code-sets/binds-where.ts';
import { inEdition, movedThresholds } from './code-sets/moved-thresholds.ts';
import { siteSets } from './code-sets/site-sets.ts';
import { isBorrowed } from './family-in.ts';
import type { Clause, Rule } from './rule.ts';

/** What stands behind a condition where that is not simply the code of the place; '' elsewhere. */
export function basisOf(
  { rule, set }: Pick<Asked, 'rule' | 'set'>,
  header: Pick<SiteHeader, 'codes'>,
  speech: Speech,
): string {
  const { document, clause } = rule.source;
  if (isBorrowed(rule, set)) {
    const home = homeOf(document);
    const values = {
      clause: [document, clause].filter((t) => t !== null).join(', '),
      home: home === null ? null : words.homes[home],
    };
    return say(home === null ? words.borrowedAnywhere : words.borrowed, values, speech);
  }
  if (rule.since === undefined || adoptedYear(header, document) !== null) return '';
  return say(words.sinceUnknown, { since: String(rule.since), document }, speech);
}

/**
 * The source with the number that the clause has in the adopted edition; of one whose numbers were not seen, the last that
 * were. Of several documents those that bind in the set that is asked.
 */
export function sourceIn(asked: Pick<Asked, 'rule' | 'set' | 'codeSet'>, header: SiteHeader): Clause {
  const { rule } = asked;
  const isForAll = asked.codeSet === 'any' && siteSets(header).length > 1;
  const source = isForAll ? rule.source : boundIn(rule, asked.set);
  if (rule.clauses === undefined) return source;
  const year = adoptedYear(header, source.document);
  if (year === null) return source;
  const moved = rule.clauses.findLast((c) => c.from <= year) ?? rule.clauses[0];
  if (moved === undefined) return source;
  const isSeen = source.document !== movedThresholds.necNumbers.document || isCited(header);
  return isSeen ? { ...source, edition: String(year), clause: moved.clause } : { ...source, clause: moved.clause };
}

/** A document of another country beside one that binds here would read as if it bound too. */
function boundIn({ family, source }: Pick<Rule, 'family' | 'source'>, set: Region): Clause {
  const binds = whichBindIn(source.document, set);
  const clauses = source.clause?.split('; ') ?? [];
  const areSeveral = binds.includes(true) && binds.includes(false);
  if (family !== 'code' || !areSeveral || clauses.length !== binds.length) return source;
  const kept = (list: readonly string[]) => list.filter((_, i) => binds[i]).join('; ');
  const editions = source.edition?.split('; ') ?? [];
  return {
    ...source,
    document: kept(source.document.split('; ')),
    edition: editions.length === binds.length ? kept(editions) : null,
    clause: kept(clauses),
  };
}

function isCited(header: SiteHeader): boolean {
  return inEdition(movedThresholds.necNumbers, header).value === 'cited';
}
