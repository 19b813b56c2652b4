import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { cell, listCell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { type PageContext, partName, sayIn } from './page-context.ts';

const words = scheduleWords.reach;

/** What still reaches each box in this state: mains, data and control lines as well as antennas. */
export function reachSection(page: PageContext): Section {
  const { reach } = page.study;
  const line = (l: (typeof reach)[number]['by'][number]) =>
    sayIn(page, words.from, { line: partName(page, l.line), from: partName(page, l.from) });
  const rows = reach.map((r) =>
    row(cell(partName(page, r.part)), r.by.length === 0 ? cell(words.nothing) : listCell(r.by.map(line))),
  );
  const table = { id: 'reach-table', caption: words.caption, head: [words.box, words.lines], rows };
  const intro = reach.length === 0 ? pageWords.page.none : words.intro;
  return { id: 'reach', heading: words.heading, blocks: [paragraph(intro), ...tableIfAny(table)] };
}
