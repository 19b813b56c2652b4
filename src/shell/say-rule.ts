import { basisOf } from '../rules/basis-of.ts';
import { familyIn, isBorrowed } from '../rules/family-in.ts';
import { limitText } from '../rules/limit-text.ts';
import type { Rule } from '../rules/rule.ts';
import { remedyIn } from '../rules/rule-sentence.ts';
import type { Region } from '../site/site.ts';
import { rulePageWords as words } from '../words/rule-page-words.ts';
import { ruleWords } from '../words/rules/index.ts';
import { type Speech, say } from '../words/say.ts';

/** Document, edition and clause of a rule in one line. */
export function citedText({ source }: Pick<Rule, 'source'>): string {
  return [source.document, source.edition, source.clause].filter((part) => part !== null).join(', ');
}

/** A rule's record in words, a paragraph each: what, why, limit, what counts as met, exemptions, remedy, provenance. */
export function sayRule(rule: Rule, region: Region, speech: Speech): readonly string[] {
  const own = ruleWords[rule.id]!;
  const filled = (template: string) => say(template, { ...ofNoSite(template), ...words.ofNoSite }, speech);
  const line = (template: string, text: string) => (text === '' ? [] : [say(template, { text }, speech)]);
  const { id, severity, codeSets, since, source } = rule;
  const family = words.families[familyIn(rule, region)];
  const seen = words.provenance[source.provenance];
  return [
    say(words.record, { id, severity, family, sets: codeSets.join(', ') }, speech),
    filled(own.title),
    ...line(words.why, filled(own.why)),
    ...line(words.limit, limitText(rule, speech)),
    ...line(words.met, filled(own.met)),
    ...line(words.exempt, own.exempt === undefined ? '' : filled(own.exempt)),
    ...line(words.remedy, filled(remedyIn(rule, region))),
    ...(since === undefined ? [] : [say(words.since, { since: String(since), document: source.document }, speech)]),
    ...movedText(rule, speech),
    say(words.source, { cited: citedText(rule), seen }, speech),
    ...[basisOfRule(rule, region, speech)].filter((t) => t !== ''),
  ];
}

/** Where the figure comes from in a region in which its clause does not bind. */
function basisOfRule(rule: Rule, region: Region, speech: Speech): string {
  return isBorrowed(rule, region) ? basisOf({ rule, set: region }, { codes: [] }, speech) : '';
}

function movedText({ clauses = [] }: Rule, speech: Speech): readonly string[] {
  if (clauses.length === 0) return [];
  const list = clauses.map(({ from, clause }) =>
    say(from === 0 ? words.clauseFirst : words.clauseFrom, { clause, from: String(from) }, speech),
  );
  return [say(words.clauses, { list: list.join('; ') }, speech)];
}

/** A sentence that names a figure of the site has none here. */
function ofNoSite(template: string): Readonly<Record<string, string>> {
  const names = [...template.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!);
  return Object.fromEntries(names.map((name) => [name, words.figureOfNoSite]));
}
