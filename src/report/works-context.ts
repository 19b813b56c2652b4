import type { Comparison } from '../compare/comparison.ts';
import { unionOf } from '../drawing/compare-union.ts';
import { itemNumbers } from '../drawing/item-numbers.ts';
import type { Step, WorksPlan } from '../rework/work.ts';
import type { Interval } from '../units/interval.ts';
import { tapeText } from '../units/tape-text.ts';
import { pageWords } from '../words/page.ts';
import { workSteps, workTitle } from '../words/work-title.ts';
import { type PageContext, pageContext, partName } from './page-context.ts';

/** A page about a plan of works: it speaks of the site as it will be, and numbers what will be gone as well. */
export interface WorksContext extends PageContext {
  readonly plan: WorksPlan;
  readonly comparison: Comparison;
}

export function worksContext(plan: WorksPlan, comparison: Comparison, sections: readonly string[]): WorksContext {
  const union = unionOf(plan.before, plan.after, comparison.parts);
  const page = pageContext(plan.after, sections);
  return { ...page, numbers: itemNumbers(union.study), plan, comparison };
}

/** A length as a tape shows it, in both systems; `unknown` where it is. */
export function tape(page: PageContext, lengthM: number | Interval | null): string {
  const range = typeof lengthM === 'number' ? { low: lengthM, high: lengthM } : lengthM;
  return tapeText(range, page.speech.unitsFirst) ?? pageWords.page.unknown;
}

/** What a work is called. */
export function titleOf(page: WorksContext, { work }: Pick<Step, 'work'>): string {
  return workTitle(work, page.speech);
}

/** What is to be done, step by step. */
export function stepsOf(page: WorksContext, { work }: Pick<Step, 'work'>): readonly string[] {
  const names = work.at.map((p) => partName(page, p));
  return workSteps(work, names, page.speech);
}
