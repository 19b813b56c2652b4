import { percent } from '../drawing/chart-names.ts';
import type { Bounded, StudyTransferred } from '../study/study-earth.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, cell, paragraph, row, subheading, tableIfAny } from './block.ts';
import { type PageContext, partName, sayIn } from './page-context.ts';

const words = soilWords.transferred;
const mostRows = 40;

/** What each electrode takes on from the groups that it is not bonded to. */
export function transferredBlocks(page: PageContext): readonly Block[] {
  const { transferred } = page.study.earth;
  if (transferred.length === 0) return [];
  const { told, leftShare } = worthTelling(transferred);
  const table = tableIfAny({
    id: 'soil-transferred',
    caption: sayIn(page, words.caption),
    head: [sayIn(page, soilWords.electrodes.electrode), words.group, words.share],
    rows: told.map((t) =>
      row(cell(partName(page, t.electrode)), cell(partName(page, t.group)), cell(shareRange(page, t.share))),
    ),
  });
  const left = { count: transferred.length - told.length, share: percent(leftShare) };
  const more = left.count === 0 ? [] : [paragraph(sayIn(page, words.more, { ...left, count: String(left.count) }))];
  return [subheading(sayIn(page, words.heading)), paragraph(sayIn(page, words.intro)), ...table, ...more];
}

/** As many pairs as fill a sheet of paper: those that take on most, in the order of the study. */
function worthTelling(all: readonly StudyTransferred[]) {
  const order = [...all].sort((a, b) => most(b) - most(a));
  const told = new Set(order.slice(0, mostRows));
  return { told: all.filter((t) => told.has(t)), leftShare: order[mostRows] === undefined ? 0 : most(order[mostRows]) };
}

function most({ share }: StudyTransferred): number {
  return share.high ?? 1;
}

/** `4 % to 9 %`; nothing takes on more than the whole. */
function shareRange(page: PageContext, { low, high }: Bounded): string {
  const [from, to] = [percent(low), percent(high ?? 1)];
  return from === to ? from : sayIn(page, words.range, { from, to });
}
