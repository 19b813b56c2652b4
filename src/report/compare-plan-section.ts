import { changesNotOnPlan, comparePlan, hasComparePlan } from '../drawing/compare-plan.ts';
import { compareSchematic } from '../drawing/compare-schematic.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { paragraph, type Section } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { partNames, sayIn } from './page-context.ts';

const words = compareReportWords.plan;

/** One drawing of both, to scale, or a schematic that says that it is no plan; what is on neither is named. */
export function comparePlanSection(page: CompareContext): Section {
  const { before, after, comparison } = page;
  const toScale = hasComparePlan(before.study, after.study, comparison);
  const draw = toScale ? comparePlan : compareSchematic;
  const svg = draw(before.study, after.study, comparison);
  const missing = toScale ? changesNotOnPlan(before.study, after.study, comparison) : [];
  const note =
    missing.length === 0 ? [] : [paragraph(sayIn(after, words.missing, { list: partNames(after, missing) }))];
  const caption = toScale ? words.caption : words.schematicCaption;
  return { id: 'plan', heading: words.heading, blocks: [{ is: 'figure', id: 'plan-figure', svg, caption }, ...note] };
}
