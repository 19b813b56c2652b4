import type { Facts } from '../facts/facts.ts';
import { claimsOf } from '../rules/claims.ts';
import { adoptedEdition } from '../rules/code-sets/adopted-edition.ts';
import { bindsIn } from '../rules/code-sets/binds-where.ts';
import { movedThresholds } from '../rules/code-sets/moved-thresholds.ts';
import { siteSets } from '../rules/code-sets/site-sets.ts';
import type { RulesRun } from '../rules/run-rules.ts';
import { type Speech, say } from '../words/say.ts';
import { studyWords } from '../words/study.ts';
import type { Study } from './study.ts';

/**
 * Documents whose edition matters to a condition that was asked and of which the owner names none: the newest figures that
 * are known were taken. One line for each document, by name.
 */
export function editionsAssumed(
  { header }: Pick<Facts, 'header'>,
  conditions: RulesRun['conditions'],
  speech: Speech,
): Study['assumptions'] {
  const asked = conditions.filter((c) => !silent.has(c.outcome)).flatMap((c) => c.source.document.split('; '));
  const isAsked = (document: string) => asked.some((name) => name === document || name.startsWith(`${document}-`));
  return [...newest()]
    .filter(([document]) => siteSets(header).some((set) => bindsIn(document, set)) && isAsked(document))
    .filter(([document]) => isUnnamed(document, header))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([document, edition]) => ({
      path: 'site.code',
      taken: say(studyWords['edition taken'], { document, edition }, speech),
      effect: say(studyWords['edition matters'], {}, speech),
    }));
}

const silent: ReadonlySet<string> = new Set(['not applicable', 'not looked at']);

/** Nobody is held to a tower standard that the file does not claim; a claim may name its edition too. */
function isUnnamed(document: string, header: Facts['header']): boolean {
  if (document === 'TIA-222') return claimsOf(header).tower === 'unknown';
  return adoptedEdition(header, document) === null;
}

/** The newest step that is known of each document whose figures or numbers moved. */
function newest(): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { document, subject, steps } of Object.values(movedThresholds)) {
    const from = steps.at(-1)?.from ?? null;
    // of 2026 only the numbers are known to have changed, and none of its figures was seen
    if (steps.length < 2 || from === null || subject === 'numbers of clauses') continue;
    const before = found.get(document);
    if (before === undefined || from > before) found.set(document, from);
  }
  return found;
}
