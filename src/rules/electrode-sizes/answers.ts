import type { Answer } from '../../site/site.ts';

/** Any one will do. */
export function best(answers: readonly Answer[]): Answer {
  if (answers.includes('yes')) return 'yes';
  return answers.includes('unknown') ? 'unknown' : 'no';
}

/** Both are needed. */
export function both(a: Answer, b: Answer): Answer {
  if (a === 'no' || b === 'no') return 'no';
  return a === 'yes' && b === 'yes' ? 'yes' : 'unknown';
}
