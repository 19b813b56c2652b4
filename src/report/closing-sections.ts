import { cautionWords, signatureWords } from '../words/caution-words.ts';
import { glossaryWords, houseMeanings, termMeanings } from '../words/glossary-words.ts';
import { term } from '../words/terms.ts';
import { cell, paragraph, row, type Section } from './block.ts';
import { type PageContext, sayIn } from './page-context.ts';

export function cautionsSection(page: PageContext): Section {
  const items = cautionWords.list.map((c) => sayIn(page, c));
  return {
    id: 'cautions',
    heading: cautionWords.heading,
    blocks: [paragraph(sayIn(page, cautionWords.deference)), { is: 'list', ordered: false, items }],
  };
}

/** The region's words with their meanings, by word. */
export function glossarySection(page: PageContext): Section {
  const terms = termMeanings.map(([idea, meaning]) => ({
    word: term(idea, page.speech.terms),
    meaning: sayIn(page, meaning),
  }));
  const house = houseMeanings.map(([word, meaning]) => ({ word, meaning: sayIn(page, meaning) }));
  const items = [...terms, ...house].sort((a, b) => (a.word < b.word ? -1 : 1));
  return { id: 'glossary', heading: glossaryWords.heading, blocks: [{ is: 'definitions', items }] };
}

/** Empty lines to sign on: the program signs nothing. */
export function signaturesSection(page: PageContext): Section {
  const { heading, intro, caption, role, name, licence, signature, date, roles } = signatureWords;
  const rows = roles.map((r) => row(cell(sayIn(page, r)), cell(), cell(), cell(), cell()));
  return {
    id: 'signatures',
    heading,
    blocks: [
      paragraph(intro),
      {
        is: 'table',
        id: 'signature-table',
        look: 'signatures',
        caption,
        head: [role, name, licence, signature, date],
        rows,
      },
    ],
  };
}
