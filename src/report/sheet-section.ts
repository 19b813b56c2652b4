import { sheetFacts } from '../rework/sheet/sheet-facts.ts';
import type { Step } from '../rework/work.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { type Block, cell, paragraph, row, type Section, subheading } from './block.ts';
import { sayIn } from './page-context.ts';
import { sheetRows } from './sheet-rows.ts';
import { testBlocks } from './sheet-tests.ts';
import { titleOf, type WorksContext } from './works-context.ts';

const words = sheetWords;

/** One work on a sheet of its own: what is asked, what to see to first, hold point, readings, who signs. */
export function sheetSection(page: WorksContext, step: Step, index: number): Section {
  const number = String(index + 1);
  const facts = sheetFacts(step, page.plan);
  const digs = facts.inSoil.length > 0;
  const start = [
    ...(digs ? [words.start.dig] : []),
    ...(facts.panels.length > 0 ? [words.start.panel] : []),
    words.start.transmitter,
    words.start.material,
  ];
  const hold = digs ? (facts.conductors.length > 0 ? words.hold.buried : words.hold.rod) : words.hold.covered;
  const asked: Block = {
    is: 'table',
    id: `asked-${number}`,
    look: 'plain',
    caption: sayIn(page, words.work.caption, { number }),
    head: [words.work.row, words.work.text],
    rows: sheetRows(page, step, facts),
  };
  return {
    id: `work-${number}`,
    heading: sayIn(page, words.work.heading, { number, title: titleOf(page, step) }),
    blocks: [
      asked,
      subheading(words.start.heading),
      { is: 'checklist', items: start.map((t) => ({ text: sayIn(page, t), at: '', decides: '' })) },
      subheading(words.hold.heading),
      paragraph(sayIn(page, hold)),
      ...testBlocks(page, step, facts, number),
      signTable(page, number, facts.panels.length > 0),
    ],
  };
}

function signTable(page: WorksContext, number: string, opens: boolean): Block {
  const { roles, caption } = words.sign;
  const asked = [roles.did, ...(opens ? [roles.opened] : []), roles.looked, roles.read];
  const { role, name, licence, signature, date } = words.sign.columns;
  return {
    is: 'table',
    id: `signed-${number}`,
    look: 'signatures',
    caption: sayIn(page, caption, { number }),
    head: [role, name, licence, signature, date],
    rows: asked.map((r) => row(cell(sayIn(page, r)), cell(), cell(), cell(), cell())),
  };
}
