import type { Comparison } from '../compare/comparison.ts';
import { worksChart } from '../drawing/works-chart.ts';
import type { WorksPlan } from '../rework/work.ts';
import { worksPageWords } from '../words/works-page-words.ts';
import type { Section } from './block.ts';
import { cautionsSection, glossarySection } from './closing-sections.ts';
import type { ReportModel } from './report-model.ts';
import { worksPlanSection } from './sheet-plan.ts';
import { type WorksContext, worksContext } from './works-context.ts';
import { worksEachSection } from './works-each.ts';
import { framedModel } from './works-frame.ts';
import { worksLeftSection, worksRemainSection } from './works-left.ts';
import { worksListSection, worksSummarySection } from './works-list.ts';
import { worksMaterialSection } from './works-material.ts';
import { worksMethodSection } from './works-method.ts';

/** The page of a plan of works, for whoever decides and pays. Same plan, same model. */
export function worksModel(plan: WorksPlan, comparison: Comparison): ReportModel {
  const page = worksContext(plan, comparison, []);
  const some = plan.steps.length > 0;
  const sections: readonly Section[] = [
    worksSummarySection(page),
    ...(some
      ? [
          worksListSection(page),
          chartSection(page),
          worksPlanSection(page),
          worksEachSection(page),
          worksMaterialSection(page),
        ]
      : []),
    worksRemainSection(page),
    worksLeftSection(page),
    worksMethodSection(page),
    cautionsSection(page),
    glossarySection(page),
  ];
  return framedModel(page, sections, worksPageWords);
}

function chartSection({ plan }: WorksContext): Section {
  const words = worksPageWords.chart;
  const heading = plan.weighedBy === 'price' ? words.heading : words.headingMaterial;
  const figure = { is: 'figure', id: 'chart-figure', svg: worksChart(plan), caption: words.caption } as const;
  return { id: 'chart', heading, blocks: [figure] };
}
