import { codeSetWords as words } from '../words/code-set-words.ts';
import { type Speech, say } from '../words/say.ts';
import type { Asked } from './asked.ts';
import type { Heading } from './finding-of.ts';
import type { Rule, Verdict } from './rule.ts';
import { ruleSentence, wordsOf } from './rule-sentence.ts';
import type { Condition } from './run-rules.ts';

const outcomeOrder = ['not met', 'cannot tell', 'met', 'not looked at'] as const;

/** How a rule went in one code set: its worst place, and how many there were. */
export function conditionOf(asked: Asked, { source, basis, speech }: Heading): Condition {
  const { rule, verdicts, adopted } = asked;
  const counts = countsOf(verdicts);
  const outcome = outcomeOrder.find((o) => counts[o] > 0) ?? 'not applicable';
  return {
    ...head(rule, speech),
    source,
    family: asked.family,
    codeSet: asked.codeSet,
    outcome,
    met: counts.met,
    notMet: counts['not met'],
    cannotTell: counts['cannot tell'],
    because: adopted === null ? silence(asked, outcome, speech) : sinceText(rule, adopted, speech),
    basis,
  };
}

function countsOf(verdicts: readonly Verdict[]): Readonly<Record<Verdict['is'], number>> {
  const counts = { met: 0, 'not met': 0, 'cannot tell': 0, 'not applicable': 0, 'not looked at': 0 };
  for (const v of verdicts) counts[v.is]++;
  return counts;
}

/** Why nothing was found, in the rule's own words. */
function silence({ rule, verdicts }: Asked, outcome: Condition['outcome'], speech: Speech): string {
  const silent = verdicts.find((v) => v.is === outcome && (v.is === 'not applicable' || v.is === 'not looked at'));
  return silent === undefined ? '' : ruleSentence(rule, silent.because, speech);
}

function sinceText({ source }: Rule, { year, since }: NonNullable<Asked['adopted']>, speech: Speech): string {
  return say(words.sinceLater, { since: String(since), document: source.document, year: String(year) }, speech);
}

/** A rule that no code set of the site asks. */
export function asleepCondition(rule: Rule, speech: Speech): Condition {
  const sets = rule.codeSets.map((set) => set.toUpperCase()).join(', ');
  return {
    ...head(rule, speech),
    codeSet: rule.codeSets[0]!,
    outcome: 'not applicable',
    met: 0,
    notMet: 0,
    cannotTell: 0,
    because: say(words.elsewhere, { sets }, speech),
    basis: '',
  };
}

function head(r: Rule, speech: Speech) {
  const title = say(wordsOf(r).title, {}, speech);
  return { rule: r.id, family: r.family, severity: r.severity, title, source: r.source };
}
