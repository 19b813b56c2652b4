import { type Allowance, allowances } from '../rework/cost/allowances.ts';
import { allowance, ownHours } from '../rework/cost/hours-of.ts';
import { worksPageWords } from '../words/works-page-words.ts';
import { cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { sayIn } from './page-context.ts';
import type { WorksContext } from './works-context.ts';
import { orderText } from './works-order.ts';

const words = worksPageWords.method;

/** How works were tried and put in order, and the hours that each thing is taken to need. */
export function worksMethodSection(page: WorksContext): Section {
  const prices = page.plan.before.prices ?? null;
  const rows = (Object.keys(allowances) as Allowance[]).map((name) => {
    const own = ownHours(name, prices);
    const { low, high } = allowance(name, prices);
    const from = own === null ? words.ours : sayIn(page, words.owner, { line: own.typed });
    return row(cell(sayIn(page, words.allowances[name])), cell(hours(low, high)), cell(from));
  });
  const head = [words.what, words.hours, words.from];
  return {
    id: 'method',
    heading: words.heading,
    blocks: [
      paragraph(orderText(page.plan, page.speech)),
      paragraph(words.tried),
      ...tableIfAny({ id: 'hours-table', caption: words.hoursCaption, head, rows }),
      paragraph(words.own),
    ],
  };
}

function hours(low: number, high: number): string {
  const [from, to] = [low, high].map((h) => String(Number(h.toPrecision(2))));
  return from === to ? to! : `${from} to ${to}`;
}
