import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { type PageContext, sayIn } from './page-context.ts';

/** What had to be taken because the file does not say; the same field of several parts in one row. */
export function assumptionsSection({ study }: PageContext): Section {
  const words = scheduleWords.assumptions;
  const alike = new Map<string, string[]>();
  for (const a of study.assumptions) {
    const [section, id, field] = partsOf(a.path);
    const key = JSON.stringify([section, field, a.taken, a.effect]);
    alike.set(key, [...(alike.get(key) ?? []), id]);
  }
  const rows = [...alike].map(([key, ids]) => {
    const [section, field, taken, effect] = JSON.parse(key) as readonly [string, string, string, string];
    const names = ids.filter((id) => id !== '').join(', ');
    return row(cell(field === '' ? section : `${section}: ${field}`, names), cell(taken, effect));
  });
  const table = { id: 'assumptions-table', caption: words.caption, head: [words.entry, words.taken], rows };
  const intro = rows.length === 0 ? pageWords.page.none : words.intro;
  return { id: 'assumptions', heading: words.heading, blocks: [paragraph(intro), ...tableIfAny(table)] };
}

/** `electrodes.E1.top`: section, part, field; a shorter path is a section or field by itself. */
function partsOf(path: string): readonly [section: string, id: string, field: string] {
  const [section, id, ...field] = path.split('.');
  return field.length === 0 ? [path, '', ''] : [section!, id!, field.join('.')];
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
