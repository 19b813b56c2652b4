import type { Answer } from '../../site/site.ts';
import { type Interval, isAtLeast } from '../../units/interval.ts';

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

/** Whether a length reaches a limit, metres; a figure as printed meets a figure as printed. */
export function reaches(lengthM: Interval | null, limitM: number): Answer {
  return lengthM === null ? 'unknown' : isAtLeast(lengthM, limitM * (1 - 2e-3));
}
