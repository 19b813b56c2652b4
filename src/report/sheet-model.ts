import type { Comparison } from '../compare/comparison.ts';
import type { WorksPlan } from '../rework/work.ts';
import { pageWords } from '../words/page.ts';
import { plainText } from '../words/plain-text.ts';
import { sheetWords } from '../words/sheet-words.ts';
import type { Section } from './block.ts';
import { cautionsSection, glossarySection } from './closing-sections.ts';
import { cover } from './cover.ts';
import { sayIn } from './page-context.ts';
import { languageOf, type ReportModel } from './report-model.ts';
import { sheetBeforeSection, sheetFirstSection, worksPlanSection } from './sheet-first.ts';
import { sheetMaterialSection } from './sheet-material.ts';
import { sheetRulesSection } from './sheet-rules.ts';
import { sheetSection } from './sheet-section.ts';
import { type WorksContext, worksContext } from './works-context.ts';

/** The contractor's sheet of a plan of works, without prices: for somebody who knows wiring and not radio. Same plan, same model. */
export function sheetModel(plan: WorksPlan, comparison: Comparison): ReportModel {
  const page = worksContext(plan, comparison, []);
  const sections: readonly Section[] = [
    sheetFirstSection(page),
    sheetBeforeSection(page),
    worksPlanSection(page),
    sheetRulesSection(page),
    ...plan.steps.map((s, i) => sheetSection(page, s, i)),
    sheetMaterialSection(page),
    cautionsSection(page),
    glossarySection(page),
  ];
  return worksModel(page, sections, sheetWords);
}

interface Head {
  readonly title: string;
  readonly kicker: string;
  readonly caution: string;
  readonly skip: string;
  readonly footer: string;
}

/** A page of numbered sections under the title block of the site. */
export function worksModel(page: WorksContext, sections: readonly Section[], head: Head): ReportModel {
  const { site, tool } = page.plan.before;
  const name = site.name ?? pageWords.page.unnamed;
  const [lead, ...others] = sections.map((s, i) => ({ ...s, number: String(i + 1) }));
  const values = { site: name, version: tool.version, checksum: site.checksum.slice(0, 12) };
  return {
    lang: languageOf(site.region),
    title: sayIn(page, head.title, values),
    paper: page.speech.terms === 'us' ? 'letter' : 'A4',
    skip: head.skip,
    contents: pageWords.page.contents,
    cover: {
      ...cover({ ...page, study: page.plan.before }),
      kicker: sayIn(page, head.kicker),
      caution: sayIn(page, head.caution),
    },
    lead: lead!,
    sections: others,
    footer: plainText(sayIn(page, head.footer, values)),
    pageNumber: pageWords.page.pageNumber,
  };
}
