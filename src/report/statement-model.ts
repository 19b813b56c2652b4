import { pageWords } from '../words/page.ts';
import { plainText } from '../words/plain-text.ts';
import { type LeaveOut, statementWords } from '../words/statement-words.ts';
import type { Section } from './block.ts';
import { compareContext, wordingOf } from './compare-context.ts';
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
  /** Columns beside each other share a row. */
  readonly rows: readonly StatementRow[];
  readonly footer: string;
  readonly pageNumber: string;
}

export interface StatementRow {
  /** For the style sheet. */
  readonly look: string;
  readonly columns: readonly { readonly sections: readonly NumberedSection[] }[];
}

/** As found and as left on two pages, without what the owner keeps back, each word of the tables explained. Same input, same model. */
export function statementModel(input: StatementInput, leaveOut: ReadonlySet<LeaveOut> = new Set()): StatementModel {
  const { before, after, comparison } = redacted(input, leaveOut);
  const context = compareContext(before, after, comparison, []);
  const wording = wordingOf(context);
  const page = { ...context, sides: { before: statementWords.cover.found, after: statementWords.cover[wording] } };
  const cover = statementCover(page);
  const written: readonly Written[] = [
    { look: 'found', columns: [[foundSection(page)], [doneSection(page)]] },
    {
      look: 'figures',
      columns: [[statementPlanSection(page, leaveOut.has('plan'))], [statementFiguresSection(page), openSection(page)]],
    },
    { look: 'one', columns: [[statementLinesSection(page)]] },
    { look: 'one', columns: [[statementElectrodesSection(page)]] },
    { look: 'closing', columns: [[statementCautionsSection(page), leftOutSection(page, leaveOut)], []] },
    { look: 'one', columns: [[statementSignaturesSection(page)]] },
  ];
  const footer = plainText(
    sayIn(page.after, statementWords.footer, {
      site: cover.title,
      checksum: after.site.checksum.slice(0, 12),
      version: after.tool.version,
    }),
  );
  const title = sayIn(page.after, statementWords.title[wording], { site: cover.title });
  const words = statementGlossary([...textsIn({ cover, written }), footer, title], page.after.speech);
  return {
    lang: languageOf(after.site.region),
    title,
    paper: page.after.speech.terms === 'us' ? 'letter' : 'A4',
    skip: statementWords.skip,
    cover,
    rows: numbered(written.map((row) => withWords(row, words))),
    footer,
    pageNumber: pageWords.page.pageNumber,
  };
}

interface Written {
  readonly look: string;
  readonly columns: readonly (readonly Section[])[];
}

/** The words stand beside the cautions. */
function withWords(row: Written, words: Section): Written {
  if (row.look !== 'closing') return row;
  return { ...row, columns: row.columns.map((c, i) => (i === 1 ? [...c, words] : c)) };
}

function numbered(rows: readonly Written[]): readonly StatementRow[] {
  let number = 0;
  const next = () => {
    number += 1;
    return String(number);
  };
  return rows.map(({ look, columns }) => ({
    look,
    columns: columns.map((sections) => ({ sections: sections.map((s) => ({ ...s, number: next() })) })),
  }));
}
