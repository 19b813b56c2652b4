import type { Study } from '../study/study.ts';
import { partOfPoint } from './item-numbers.ts';
import { weakRows } from './weak-rows.ts';

/** Marks of weak points by part. A joint at a wire's end marks the wire. */
export function weakMarks(study: Study): ReadonlyMap<string, string> {
  const marks = new Map<string, Set<string>>();
  for (const { mark, points } of weakRows(study)) {
    for (const { at } of points) {
      const part = partOfPoint(at);
      marks.set(part, (marks.get(part) ?? new Set<string>()).add(mark));
    }
  }
  return new Map([...marks].map(([part, list]) => [part, [...list].join(' ')]));
}
