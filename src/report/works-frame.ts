import { pageWords } from '../words/page.ts';
import { plainText } from '../words/plain-text.ts';
import type { Section } from './block.ts';
import { cover } from './cover.ts';
import { sayIn } from './page-context.ts';
import { languageOf, type ReportModel } from './report-model.ts';
import type { WorksContext } from './works-context.ts';

interface Head {
  readonly title: string;
  readonly kicker: string;
  readonly caution: string;
  readonly skip: string;
  readonly footer: string;
}

/** A page of numbered sections under the title block of the site. */
export function framedModel(page: WorksContext, sections: readonly Section[], head: Head): ReportModel {
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
