import type { Study } from '../study/study.ts';
import { setName } from '../words/code-set-words.ts';
import { pageWords } from '../words/page.ts';
import { type Block, cell, paragraph, row, type Section, subheading, type Table } from './block.ts';
import { type PageContext, sayIn } from './page-context.ts';

const words = pageWords.verdict;

/** Three sentences, the first three actions, and how many of each severity. */
export function verdictSection(page: PageContext): Section {
  const { verdict } = page.study;
  const actions: Block =
    verdict.actions.length === 0
      ? paragraph(words.noActions)
      : { is: 'list', ordered: true, items: verdict.actions.map((a) => a.text) };
  return {
    id: 'verdict',
    heading: words.heading,
    blocks: [...verdict.text.map(paragraph), subheading(words.actions), actions, counts(page), ...agreedBeside(page)],
  };
}

/** A column for each set of conditions where there are several. */
function counts(page: PageContext): Table {
  const { verdict } = page.study;
  const lookAt = sayIn(page, words.cannotTellMeaning, { section: page.sectionNumber('look-at') });
  const columns = verdict.bySet ?? [verdict];
  const line = (name: string, meaning: string, key: Count) =>
    row(cell(name), cell(meaning), ...columns.map((c) => cell(String(c[key]))));
  const agreed =
    verdict.bySet === undefined && verdict.agreed > 0
      ? [row(cell(words.agreed), cell(words.agreedMeaning), cell(String(verdict.agreed)))]
      : [];
  return {
    is: 'table',
    id: 'counts',
    look: 'plain',
    caption: words.countsCaption,
    head: [words.severity, words.meaning, ...(verdict.bySet?.map((set) => setName(set.codeSet)) ?? [words.count])],
    rows: [
      line(words.hazard, words.hazardMeaning, 'hazards'),
      line(words.defect, words.defectMeaning, 'defects'),
      line(words.advice, words.adviceMeaning, 'advices'),
      line(words.cannotTell, lookAt, 'cannotTell'),
      ...agreed,
    ],
  };
}

type Count = Exclude<keyof Study['verdict'], 'agreed' | 'bySet' | 'text' | 'actions'>;

/** What was agreed to is counted once for all sets. */
function agreedBeside({ study: { verdict } }: PageContext): readonly Block[] {
  if (verdict.bySet === undefined || verdict.agreed === 0) return [];
  return [paragraph(`${words.agreed}: ${verdict.agreed} (${words.agreedMeaning}).`)];
}
