import type { Study, StudySetCounts } from '../study/study.ts';
import { setName } from '../words/code-set-words.ts';

type Count = Exclude<keyof StudySetCounts, 'codeSet'>;

/** A count of a study; with several sets of conditions that of each, by name: they are never added up. */
export function countText({ verdict }: Study, key: Count): string {
  const { bySet } = verdict;
  if (bySet === undefined) return String(verdict[key]);
  return bySet.map((set) => `${setName(set.codeSet)} ${set[key]}`).join(', ');
}
