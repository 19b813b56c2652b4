import type { Study } from '../study/study.ts';
import type { StudyStrike } from '../study/study-strike.ts';

/** The strikes of a study; a stored one may be older than they are. */
export function strikesOf(study: Study): readonly StudyStrike[] {
  return (study as { readonly strikes?: readonly StudyStrike[] }).strikes ?? [];
}
