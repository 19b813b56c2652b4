import { dimensionOfKey, formatQuantity } from '../units/format.ts';
import { rulePageWords as words } from '../words/rule-page-words.ts';
import { type Speech, say } from '../words/say.ts';
import type { Limit, Rule } from './rule.ts';

/** The limits of a rule in both unit systems, the reader's own first; '' where it asks yes or no. */
export function limitText({ limits = [] }: Pick<Rule, 'limits'>, speech: Speech): string {
  return limits.map((l) => oneLimit(l, speech)).join('; ');
}

function oneLimit({ key, value, sense, of }: Limit, speech: Speech): string {
  const dimension = dimensionOfKey(key);
  const system = speech.unitsFirst === 'us' ? 'both-us-first' : 'both-si-first';
  const figure = dimension === null ? String(value) : (formatQuantity(value, dimension, system) ?? 'unknown');
  const limit = say(words[sense], { figure }, speech);
  return of === undefined ? limit : say(words.of, { limit, of }, speech);
}
