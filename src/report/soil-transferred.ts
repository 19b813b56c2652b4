import { percent } from '../drawing/chart-names.ts';
import type { Bounded } from '../study/study-earth.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, cell, paragraph, row, subheading, tableIfAny } from './block.ts';
import { type PageContext, partName, sayIn } from './page-context.ts';

const words = soilWords.transferred;

/** What each electrode takes on from the groups that it is not bonded to. */
export function transferredBlocks(page: PageContext): readonly Block[] {
  const { transferred } = page.study.earth;
  if (transferred.length === 0) return [];
  const table = tableIfAny({
    id: 'soil-transferred',
    caption: sayIn(page, words.caption),
    head: [sayIn(page, soilWords.electrodes.electrode), words.group, words.share],
    rows: transferred.map((t) =>
      row(cell(partName(page, t.electrode)), cell(partName(page, t.group)), cell(shareRange(page, t.share))),
    ),
  });
  return [subheading(sayIn(page, words.heading)), paragraph(sayIn(page, words.intro)), ...table];
}

/** `4 % to 9 %`; nothing takes on more than the whole. */
function shareRange(page: PageContext, { low, high }: Bounded): string {
  const [from, to] = [percent(low), percent(high ?? 1)];
  return from === to ? from : sayIn(page, words.range, { from, to });
}
