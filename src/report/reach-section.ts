import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, listCell, paragraph, row, type Section, tableIfAny } from './block.ts';
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
  return {
    id: 'reach',
    heading: words.heading,
    blocks: [paragraph(intro), ...tableIfAny(table), ...statesTable(page)],
  };
}

/** One column a state; nothing where the file has no states. */
function statesTable(page: PageContext): readonly Block[] {
  const states = page.study.reachInStates;
  if (states.length < 2) return [];
  const boxes = [...new Set(states.flatMap((s) => s.reach.map((r) => r.part)))].sort();
  const rows = boxes.map((box) =>
    row(
      cell(partName(page, box)),
      ...states.map(({ reach }) => {
        const lines = [...new Set(reach.find((r) => r.part === box)?.by.map((b) => b.line) ?? [])];
        return lines.length === 0 ? cell(words.nothing) : listCell(lines);
      }),
    ),
  );
  const head = [words.box, ...states.map((s) => s.state ?? words.asTyped)];
  return [
    paragraph(words.statesIntro),
    ...tableIfAny({ id: 'reach-states', caption: words.statesCaption, head, rows }),
  ];
}
