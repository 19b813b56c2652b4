import type { SiteHeader } from '../site/site.ts';
import { codeSetWords as words } from '../words/code-set-words.ts';
import { type Speech, say } from '../words/say.ts';
import type { Asked } from './asked.ts';
import { adoptedYear } from './code-sets/adopted-edition.ts';
import { homeOf } from './code-sets/binds-where.ts';
import { inEdition, movedThresholds } from './code-sets/moved-thresholds.ts';
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

/** The source with the number that the clause has in the adopted edition; of one whose numbers were not seen, the last that were. */
export function sourceIn({ source, clauses }: Pick<Rule, 'source' | 'clauses'>, header: SiteHeader): Clause {
  if (clauses === undefined) return source;
  const year = adoptedYear(header, source.document);
  if (year === null) return source;
  const moved = clauses.findLast((c) => c.from <= year) ?? clauses[0];
  if (moved === undefined) return source;
  const isSeen = source.document !== movedThresholds.necNumbers.document || isCited(header);
  return isSeen ? { ...source, edition: String(year), clause: moved.clause } : { ...source, clause: moved.clause };
}

function isCited(header: SiteHeader): boolean {
  return inEdition(movedThresholds.necNumbers, header).value === 'cited';
}
