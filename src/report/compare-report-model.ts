import type { Comparison } from '../compare/comparison.ts';
import type { Study } from '../study/study.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { pageWords } from '../words/page.ts';
import { plainText } from '../words/plain-text.ts';
import { unknownsSection } from './assumed-sections.ts';
import type { Section } from './block.ts';
import { cautionsSection, glossarySection, signaturesSection } from './closing-sections.ts';
import { changeSection } from './compare-change.ts';
import { type CompareContext, compareContext } from './compare-context.ts';
import { compareCover } from './compare-cover.ts';
import { compareFiguresSection } from './compare-figures.ts';
import { compareFindingsSection } from './compare-findings.ts';
import { compareMaterialsSection } from './compare-materials.ts';
import { comparePartsSection } from './compare-parts.ts';
import { comparePlanSection } from './compare-plan-section.ts';
import { compareReachSection } from './compare-reach.ts';
import { compareStrikeSection } from './compare-strike.ts';
import { compareWaysSection } from './compare-ways.ts';
import { compareWeakSection } from './compare-weak.ts';
import { lookAtSection } from './look-at-section.ts';
import { sayIn } from './page-context.ts';
import { languageOf, type ReportModel } from './report-model.ts';

/** The before-and-after report's words, tables and drawing from two studies and their comparison. Same input, same model. */
export function compareReportModel(before: Study, after: Study, comparison: Comparison): ReportModel {
  const shown = sections.filter((s) => s.isThere?.(comparison) ?? true);
  const page = compareContext(
    before,
    after,
    comparison,
    shown.map((s) => s.id),
  );
  const [lead, ...others] = shown.map((s, i) => ({ ...s.write(page), id: s.id, number: String(i + 1) }));
  const cover = compareCover(page);
  return {
    lang: languageOf(after.site.region),
    title: sayIn(page.after, compareReportWords.title, { site: cover.title }),
    paper: page.after.speech.terms === 'us' ? 'letter' : 'A4',
    skip: compareReportWords.skip,
    contents: pageWords.page.contents,
    cover,
    lead: lead!,
    sections: others,
    footer: footer(page, cover.title),
    pageNumber: pageWords.page.pageNumber,
  };
}

interface CompareSectionWriter {
  readonly id: string;
  readonly isThere?: (comparison: Comparison) => boolean;
  readonly write: (page: CompareContext) => Section;
}

/** In the order of the page; the first stands on the first sheet. */
const sections: readonly CompareSectionWriter[] = [
  { id: 'verdict', write: changeSection },
  { id: 'plan', write: comparePlanSection },
  { id: 'findings', write: compareFindingsSection },
  { id: 'figures', write: compareFiguresSection },
  { id: 'ways', write: compareWaysSection },
  { id: 'strike', isThere: (c) => c.strike !== null, write: compareStrikeSection },
  { id: 'weak', write: compareWeakSection },
  { id: 'reach', write: compareReachSection },
  { id: 'parts', write: comparePartsSection },
  { id: 'materials', write: compareMaterialsSection },
  { id: 'look-at', write: (page) => lookAtSection(page.after) },
  { id: 'unknowns', write: (page) => ({ ...unknownsSection(page.after), heading: compareReportWords.left.heading }) },
  { id: 'cautions', write: (page) => cautionsSection(page.after) },
  { id: 'glossary', write: (page) => glossarySection(page.after) },
  { id: 'signatures', write: (page) => signaturesSection(page.after) },
];

function footer(page: CompareContext, site: string): string {
  const { before, after } = page.comparison;
  const name = (head: Comparison['before']) => `${head.checksum.slice(0, 12)} ${head.state.id}`;
  return plainText(
    sayIn(page.after, compareReportWords.footer, {
      site,
      before: name(before),
      after: name(after),
      version: page.after.study.tool.version,
    }),
  );
}
