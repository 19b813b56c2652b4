import type { Comparison } from '../compare/comparison.ts';
import type { WorksPlan } from '../rework/work.ts';
import { sheetWords } from '../words/sheet-words.ts';
import type { Section } from './block.ts';
import { cautionsSection, glossarySection } from './closing-sections.ts';
import type { ReportModel } from './report-model.ts';
import { sheetFirstSection, sheetListSection } from './sheet-first.ts';
import { sheetMaterialSection } from './sheet-material.ts';
import { worksPlanSection } from './sheet-plan.ts';
import { sheetRulesSection } from './sheet-rules.ts';
import { sheetSection } from './sheet-section.ts';
import { worksContext } from './works-context.ts';
import { framedModel } from './works-frame.ts';

/** The contractor's sheet of a plan of works, without prices: for somebody who knows wiring and not radio. Same plan, same model. */
export function sheetModel(plan: WorksPlan, comparison: Comparison): ReportModel {
  const page = worksContext(plan, comparison, []);
  const sections: readonly Section[] = [
    sheetFirstSection(page),
    sheetListSection(page),
    sheetRulesSection(page),
    worksPlanSection(page),
    ...plan.steps.map((s, i) => sheetSection(page, s, i)),
    sheetMaterialSection(page),
    cautionsSection(page),
    glossarySection(page),
  ];
  return framedModel(page, sections, sheetWords);
}
