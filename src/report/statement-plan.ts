import { type ComparePlanOptions, comparePlan, hasComparePlan } from '../drawing/compare-plan.ts';
import { statementWords } from '../words/statement-words.ts';
import { paragraph, type Section } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { partNames, sayIn } from './page-context.ts';

const words = statementWords.plan;
const numbered = ['electrodes', 'supports', 'bars', 'arresters', 'lines'];
const sketch: ComparePlanOptions = { widthMm: 105, tallestMm: 90, names: 'changes', numbered };

/** A small plan of the change, with the names of the numbers on it; or why there is none. */
export function statementPlanSection(page: CompareContext, isLeftOut: boolean): Section {
  const { before, after, comparison } = page;
  const head = { id: 'plan', heading: words.heading };
  if (isLeftOut) return { ...head, blocks: [paragraph(words.leftOut)] };
  if (!hasComparePlan(before.study, after.study, comparison)) return { ...head, blocks: [paragraph(words.none)] };
  const ids = page.union.study.parts
    .filter((p) => numbered.includes(p.section) && (page.union.fates.get(p.id) ?? 'same') !== 'same')
    .map((p) => p.id);
  const key = ids.length === 0 ? '' : sayIn(after, words.key, { list: partNames(after, ids) });
  const caption = sayIn(after, words.caption, { key }).trim();
  const svg = comparePlan(before.study, after.study, comparison, sketch);
  return { ...head, blocks: [{ is: 'figure', id: 'plan-figure', svg, caption }] };
}
