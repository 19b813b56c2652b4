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
    blocks: [...verdict.text.map(paragraph), subheading(words.actions), actions, counts(page)],
  };
}

function counts(page: PageContext): Table {
  const { verdict } = page.study;
  const lookAt = sayIn(page, words.cannotTellMeaning, { section: page.sectionNumber('look-at') });
  const rows: readonly (readonly [string, string, number])[] = [
    [words.hazard, words.hazardMeaning, verdict.hazards],
    [words.defect, words.defectMeaning, verdict.defects],
    [words.advice, words.adviceMeaning, verdict.advices],
    [words.cannotTell, lookAt, verdict.cannotTell],
    [words.agreed, words.agreedMeaning, verdict.agreed],
  ];
  return {
    is: 'table',
    id: 'counts',
    look: 'plain',
    caption: words.countsCaption,
    head: [words.severity, words.meaning, words.count],
    rows: rows
      .filter(([name, , count]) => count > 0 || name !== words.agreed)
      .map(([name, meaning, count]) => row(cell(name), cell(meaning), cell(String(count)))),
  };
}
