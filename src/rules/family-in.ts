import type { Region } from '../site/site.ts';
import type { Family, Rule } from './rule.ts';

/** Documents that are law or contract in the United States and nowhere else. */
const unitedStatesOnly = /^(?:NFPA 70|TIA-222)$/;

/**
 * The family of a rule where the site is: a condition that is asked everywhere but whose clause binds in one country only
 * is practice in the others, never a verdict of their code.
 */
export function familyIn({ family, codeSets, source }: Rule, region: Region): Family {
  const isAbroad = region !== 'us' && region !== 'unknown';
  const isBorrowed = codeSets.includes('any') && unitedStatesOnly.test(source.document);
  return family === 'code' && isAbroad && isBorrowed ? 'practice' : family;
}
