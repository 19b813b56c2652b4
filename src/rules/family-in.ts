import type { Region } from '../site/site.ts';
import { bindsIn } from './code-sets/binds-where.ts';
import type { Family, Rule } from './rule.ts';

/**
 * The family of a rule in a code set: a condition whose clause binds in other countries only is practice here, never a
 * verdict of the code.
 */
export function familyIn(rule: Pick<Rule, 'family' | 'source'>, set: Region): Family {
  return isBorrowed(rule, set) ? 'practice' : rule.family;
}

/** Asked here after a clause that binds elsewhere. */
export function isBorrowed({ family, source }: Pick<Rule, 'family' | 'source'>, set: Region): boolean {
  return family === 'code' && !bindsIn(source.document, set);
}
