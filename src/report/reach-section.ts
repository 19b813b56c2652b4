import type { Study } from '../study/study.ts';
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

/** One column a state, a row for each box that a state changes; nothing where the file has no states. */
function statesTable(page: PageContext): readonly Block[] {
  const states = page.study.reachInStates;
  if (states.length < 2) return [];
  const linesBy = states.map(({ reach }) => new Map(reach.map((r) => [r.part, linesOf(page, r)])));
  const boxes = [...new Set(states.flatMap((s) => s.reach.map((r) => r.part)))].sort();
  const changed = boxes.filter((box) => new Set(linesBy.map((l) => JSON.stringify(l.get(box) ?? []))).size > 1);
  const rows = changed.map((box) =>
    row(
      cell(partName(page, box)),
      ...linesBy.map((of) => {
        const lines = of.get(box) ?? [];
        return lines.length === 0 ? cell(words.nothing) : listCell(lines);
      }),
    ),
  );
  const head = [words.box, ...states.map((s) => s.state ?? words.asTyped)];
  const intro = changed.length === 0 ? words.sameInStates : words.statesIntro;
  return [paragraph(intro), ...tableIfAny({ id: 'reach-states', caption: words.statesCaption, head, rows })];
}

function linesOf(page: PageContext, { by }: Study['reach'][number]): readonly string[] {
  return [...new Set(by.map((b) => partName(page, b.line)))];
}
