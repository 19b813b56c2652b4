import type { Study } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { plainText } from '../words/plain-text.ts';
import { assumptionsSection, unknownsSection } from './assumed-sections.ts';
import type { Section } from './block.ts';
import { cautionsSection, glossarySection, signaturesSection } from './closing-sections.ts';
import { conditionsSection } from './conditions-section.ts';
import { type Cover, cover, stateName } from './cover.ts';
import { diagramSection, planSection } from './drawing-sections.ts';
import { findingsSection } from './findings-section.ts';
import { lookAtSection } from './look-at-section.ts';
import { methodSection } from './method-section.ts';
import { type PageContext, pageContext, sayIn } from './page-context.ts';
import { hasPhotos, type Photo, photosSection } from './photos-section.ts';
import { hasQuestions, questionsSection } from './questions-section.ts';
import { reachSection } from './reach-section.ts';
import { resistanceSection } from './resistance-section.ts';
import { schedulesSection } from './schedules-section.ts';
import { hasSoil, soilSection } from './soil-section.ts';
import { hasStrikes, strikeSection } from './strike-section.ts';
import { verdictSection } from './verdict-section.ts';
import { waysSection } from './ways-section.ts';
import { weakSection } from './weak-section.ts';

/** Everything that a page prints, word for word: templates decide nothing. */
export interface ReportModel {
  readonly lang: string;
  readonly title: string;
  readonly paper: 'letter' | 'A4';
  readonly skip: string;
  readonly contents: string;
  readonly cover: Cover;
  /** The section that stands on the first sheet, with the cover. */
  readonly lead: NumberedSection;
  readonly sections: readonly NumberedSection[];
  /** For the foot of printed pages, made harmless here since it is printed beside the page: text at the left, and words round `{page}` and `{pages}`. */
  readonly footer: string;
  readonly pageNumber: string;
}

export type NumberedSection = Section & { readonly number: string };

export interface ReportOptions {
  /** Pictures by the names in the site file; one that is not handed in is listed by its name. */
  readonly photos: readonly Photo[];
}

/** The report's words, tables and drawings from a study and nothing else. Same study, same model. */
export function reportModel(study: Study, options: ReportOptions = { photos: [] }): ReportModel {
  // Sections refer to one another by number, so which ones there are has to be known before any is written.
  const shown = sections.filter((s) => s.isThere?.(study) ?? true);
  const page = pageContext(
    study,
    shown.map((s) => s.id),
  );
  const [lead, ...others] = shown.map((s, i) => ({ ...s.write(page, options), number: String(i + 1) }));
  const site = study.site.name ?? pageWords.page.unnamed;
  return {
    lang: languageOf(study.site.region),
    title: sayIn(page, pageWords.page.title, { site }),
    paper: page.speech.terms === 'us' ? 'letter' : 'A4',
    skip: pageWords.page.skip,
    contents: pageWords.page.contents,
    cover: cover(page),
    lead: lead!,
    sections: others,
    footer: footer(page, site),
    pageNumber: pageWords.page.pageNumber,
  };
}

interface SectionWriter {
  readonly id: string;
  /** Left out: always there. */
  readonly isThere?: (study: Study) => boolean;
  readonly write: (page: PageContext, options: ReportOptions) => Section;
}

/** In the order of the page; the first stands on the first sheet. */
const sections: readonly SectionWriter[] = [
  { id: 'verdict', write: verdictSection },
  { id: 'questions', isThere: hasQuestions, write: questionsSection },
  { id: 'plan', write: planSection },
  { id: 'diagram', write: diagramSection },
  { id: 'findings', write: findingsSection },
  { id: 'look-at', write: lookAtSection },
  { id: 'conditions', write: conditionsSection },
  { id: 'schedules', write: schedulesSection },
  { id: 'ways', write: waysSection },
  { id: 'weak', write: weakSection },
  { id: 'reach', write: reachSection },
  { id: 'resistances', write: resistanceSection },
  { id: 'soil', isThere: hasSoil, write: soilSection },
  { id: 'strike', isThere: hasStrikes, write: strikeSection },
  { id: 'assumptions', write: assumptionsSection },
  { id: 'unknowns', write: unknownsSection },
  { id: 'photos', isThere: hasPhotos, write: (page, { photos }) => photosSection(page, photos) },
  { id: 'method', write: methodSection },
  { id: 'cautions', write: cautionsSection },
  { id: 'glossary', write: glossarySection },
  { id: 'signatures', write: signaturesSection },
];

const languages: Readonly<Record<string, string>> = { us: 'en-US', ca: 'en-CA', uk: 'en-GB', au: 'en-AU' };

/** The language of a page, by the region of its site. */
export function languageOf(region: string): string {
  return languages[region] ?? 'en';
}

function footer(page: PageContext, site: string): string {
  const { state, tool, site: of } = page.study;
  const text = sayIn(page, pageWords.page.footer, {
    site,
    state: stateName(state),
    version: tool.version,
    checksum: of.checksum.slice(0, 12),
  });
  return plainText(text);
}
