import type { Study, StudyFinding } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { wrongOf } from '../wrong-of.ts';

/** What is wrong and no work is proposed for: only a person can put it right, or say what to do. In the order of the study. */
export function unanswered(study: Study, works: readonly Work[]): readonly StudyFinding[] {
  const answered = new Set(works.filter((w) => w.unreckoned === undefined).flatMap((w) => w.answers));
  return wrongOf(study.findings).filter((f) => !answered.has(f.id));
}
