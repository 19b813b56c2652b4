import type { Study } from '../study/study.ts';
import { partOfPoint } from './item-numbers.ts';

/**
 * Marks of weak points by part: `W1` for the first row of the study's list, and so on. A joint at a wire's end marks the
 * wire.
 */
export function weakMarks(study: Study): ReadonlyMap<string, string> {
  const marks = new Map<string, string>();
  for (const [i, w] of study.bonding.weakPoints.entries()) {
    const at = partOfPoint(w.at);
    const mark = `W${i + 1}`;
    marks.set(at, marks.has(at) ? `${marks.get(at)} ${mark}` : mark);
  }
  return marks;
}
