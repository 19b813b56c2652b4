import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { type PageContext, sayIn } from './page-context.ts';

/** What had to be taken because the file does not say. */
export function assumptionsSection({ study }: PageContext): Section {
  const words = scheduleWords.assumptions;
  const rows = study.assumptions.map((a) => row(cell(a.path), cell(a.taken, a.effect)));
  const table = {
    id: 'assumptions-table',
    caption: words.caption,
    head: [words.entry, words.taken],
    rows,
  };
  const intro = rows.length === 0 ? pageWords.page.none : words.intro;
  return { id: 'assumptions', heading: words.heading, blocks: [paragraph(intro), ...tableIfAny(table)] };
}

/** What is not known, and what would settle it. */
export function unknownsSection(page: PageContext): Section {
  const words = scheduleWords.unknowns;
  const rows = page.study.unknowns.map((u) => {
    const place = u.line === null ? null : sayIn(page, words.line, { line: String(u.line) });
    return row(cell(u.path, place), cell(u.why), cell(u.settle));
  });
  const table = { id: 'unknowns-table', caption: words.caption, head: [words.entry, words.why, words.settle], rows };
  const intro = rows.length === 0 ? pageWords.page.none : words.intro;
  return { id: 'unknowns', heading: words.heading, blocks: [paragraph(intro), ...tableIfAny(table)] };
}
