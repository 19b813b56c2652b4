import { pageWords } from '../words/page.ts';
import { plainText } from '../words/plain-text.ts';
import { type LeaveOut, statementWords } from '../words/statement-words.ts';
import { compareContext } from './compare-context.ts';
import type { Cover } from './cover.ts';
import { sayIn } from './page-context.ts';
import { languageOf, type NumberedSection } from './report-model.ts';
import { leftOutSection, statementCautionsSection, statementSignaturesSection } from './statement-closing.ts';
import { statementCover } from './statement-cover.ts';
import { statementElectrodesSection } from './statement-electrodes.ts';
import { statementFiguresSection } from './statement-figures.ts';
import { doneSection, foundSection } from './statement-found.ts';
import { statementGlossary, textsIn } from './statement-glossary.ts';
import { statementLinesSection } from './statement-lines.ts';
import { openSection } from './statement-open.ts';
import { statementPlanSection } from './statement-plan.ts';
import { redacted, type StatementInput } from './statement-redact.ts';

/** Everything that the statement prints, word for word. */
export interface StatementModel {
  readonly lang: string;
  readonly title: string;
  readonly paper: 'letter' | 'A4';
  readonly skip: string;
  readonly cover: Cover;
  /** Sections beside each other share a row. */
  readonly rows: readonly { readonly look: string; readonly sections: readonly NumberedSection[] }[];
  readonly footer: string;
  readonly pageNumber: string;
}

/** As found and as left on two pages, without what the owner keeps back, each word of the tables explained. Same input, same model. */
export function statementModel(input: StatementInput, leaveOut: ReadonlySet<LeaveOut> = new Set()): StatementModel {
  const { before, after, comparison } = redacted(input, leaveOut);
  const { found, left } = statementWords.cover;
  const page = { ...compareContext(before, after, comparison, []), sides: { before: found, after: left } };
  const cover = statementCover(page);
  const written = [
    { look: 'found', sections: [foundSection(page), doneSection(page)] },
    { look: 'figures', sections: [statementPlanSection(page, leaveOut.has('plan')), statementFiguresSection(page)] },
    { look: 'one', sections: [openSection(page)] },
    { look: 'one', sections: [statementLinesSection(page)] },
    { look: 'one', sections: [statementElectrodesSection(page)] },
    { look: 'closing', sections: [statementCautionsSection(page), leftOutSection(page, leaveOut)] },
    { look: 'one', sections: [statementSignaturesSection(page)] },
  ];
  const footer = plainText(
    sayIn(page.after, statementWords.footer, {
      site: cover.title,
      checksum: after.site.checksum.slice(0, 12),
      version: after.tool.version,
    }),
  );
  const title = sayIn(page.after, statementWords.title, { site: cover.title });
  const words = statementGlossary([...textsIn({ cover, written }), footer, title], page.after.speech);
  const rows = [...written.slice(0, -1), { look: 'one', sections: [words] }, written.at(-1)!];
  return {
    lang: languageOf(after.site.region),
    title,
    paper: page.after.speech.terms === 'us' ? 'letter' : 'A4',
    skip: statementWords.skip,
    cover,
    rows: numbered(rows),
    footer,
    pageNumber: pageWords.page.pageNumber,
  };
}

function numbered(
  rows: readonly { readonly look: string; readonly sections: readonly Omit<NumberedSection, 'number'>[] }[],
): StatementModel['rows'] {
  let number = 0;
  return rows.map(({ look, sections }) => ({
    look,
    sections: sections.map((s) => {
      number += 1;
      return { ...s, number: String(number) };
    }),
  }));
}
