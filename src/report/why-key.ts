import type { LeftOut } from '../rework/work.ts';
import type { worksCommandWords } from '../words/works-command-words.ts';

/** Which sentence tells why a work is left out: some have a second one, for when there is a list or there is none. */
export function whyKey({ why, brings, because }: Omit<LeftOut, 'work'>): keyof typeof worksCommandWords.why {
  if (why === 'cannot be written' && because.length === 0) return 'cannot be written:';
  if (why === 'over budget' && because.length > 0) return 'over budget:';
  if (why === 'brings as much' && brings.length === 0) return 'brings as much:';
  return why;
}
