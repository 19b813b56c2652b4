import { changesNotOnPlan, comparePlan, hasComparePlan } from '../drawing/compare-plan.ts';
import { compareSchematic } from '../drawing/compare-schematic.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { paragraph, type Section } from './block.ts';
import { partNames, sayIn } from './page-context.ts';
import type { WorksContext } from './works-context.ts';

const words = sheetWords.plan;

/** Both sites on one plan to scale, or a schematic that says that it is no plan; what the plan has no place for is named. */
export function worksPlanSection(page: WorksContext): Section {
  const { plan, comparison } = page;
  const toScale = isToScale(page);
  const draw = toScale ? comparePlan : compareSchematic;
  const svg = draw(plan.before, plan.after, comparison);
  const missing = toScale ? changesNotOnPlan(plan.before, plan.after, comparison) : [];
  const note = missing.length === 0 ? [] : [paragraph(sayIn(page, words.missing, { list: partNames(page, missing) }))];
  const caption = toScale ? words.caption : words.schematic;
  return { id: 'plan', heading: words.heading, blocks: [{ is: 'figure', id: 'plan-figure', svg, caption }, ...note] };
}

/** Enough places are known for a plan. */
export function isToScale({ plan, comparison }: WorksContext): boolean {
  return hasComparePlan(plan.before, plan.after, comparison);
}

/** A new or changed part that somebody can find on the plan. */
export function isOnPlan(page: WorksContext, id: string): boolean {
  const { plan, comparison } = page;
  return isToScale(page) && !changesNotOnPlan(plan.before, plan.after, comparison).includes(id);
}
