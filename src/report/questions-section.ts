import { pageWords } from '../words/page.ts';
import { cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import type { PageContext } from './page-context.ts';

/** Entries of the file that look like slips; null where there are none. */
export function questionsSection({ study }: PageContext): Section | null {
  const words = pageWords.questions;
  if (study.questions.length === 0) return null;
  const rows = study.questions.map((q) => row(cell(`${q.line}:${q.column}`), cell(q.path), cell(q.text)));
  const table = {
    id: 'questions-table',
    caption: words.caption,
    head: [words.place, words.entry, words.question],
    rows,
  };
  return { id: 'questions', heading: words.heading, blocks: [paragraph(words.intro), ...tableIfAny(table)] };
}
