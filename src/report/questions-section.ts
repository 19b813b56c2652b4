import type { Study } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import type { PageContext } from './page-context.ts';

export function hasQuestions(study: Study): boolean {
  return study.questions.length > 0;
}

/** Entries of the file that look like slips. */
export function questionsSection({ study }: PageContext): Section {
  const words = pageWords.questions;
  const rows = study.questions.map((q) => row(cell(`${q.line}:${q.column}`), cell(q.path), cell(q.text)));
  const table = {
    id: 'questions-table',
    caption: words.caption,
    head: [words.place, words.entry, words.question],
    rows,
  };
  return { id: 'questions', heading: words.heading, blocks: [paragraph(words.intro), ...tableIfAny(table)] };
}
