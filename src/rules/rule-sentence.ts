import { isAmerican } from '../site/is-american.ts';
import type { Region } from '../site/site.ts';
import { codeSetWords } from '../words/code-set-words.ts';
import type { RuleWords } from '../words/rule-words.ts';
import { ruleWords } from '../words/rules/index.ts';
import { type Speech, say } from '../words/say.ts';
import type { Because, Rule } from './rule.ts';

/** Reason of the verdict that stands in for a rule that threw. */
export const faultKey = 'rule failed';

/** Reason of a verdict that turned at an owner's own limit: the figure beside it says why. */
export const ownKey = 'own limit';

/** Throws where nobody wrote any: a rule without words is no rule. */
export function wordsOf({ id }: Pick<Rule, 'id'>): RuleWords {
  const words = ruleWords[id];
  if (words === undefined) throw new Error(`rule ${id} has no words`);
  return words;
}

/** How to put it right where that set is asked. */
export function remedyIn(rule: Pick<Rule, 'id'>, set: Region): string {
  const { remedy, remedyAbroad } = wordsOf(rule);
  return isAmerican(set) ? remedy : (remedyAbroad ?? remedy);
}

/** A reason in words; `{at}` of a sentence is the list of places. Throws where the reason has no sentence. */
export function ruleSentence(r: Rule, because: Because, speech: Speech, at: readonly string[] = []): string {
  if (because.key === faultKey) return codeSetWords.fault;
  if (because.key === ownKey) return say(codeSetWords.ownLimit, { at }, speech);
  const template = wordsOf(r).because[because.key];
  if (template === undefined) throw new Error(`rule ${r.id} has no sentence '${because.key}'`);
  return say(template, { at, ...because.values }, speech);
}
