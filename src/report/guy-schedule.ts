import type { StudyGuy } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, type Row, row, tableIfAny } from './block.ts';
import { numberOf, type PageContext, partName, sayIn } from './page-context.ts';
import { byNumber } from './part-schedules.ts';

const words = scheduleWords.schedules;
const common = pageWords.page;

/** Guys with where each is anchored and what breaks or bridges its metal. */
export function guySchedule(page: PageContext): readonly Block[] {
  return tableIfAny({
    id: 'schedule-guys',
    look: 'wide',
    caption: sayIn(page, words.guys),
    head: [common.number, common.name, words.support, words.anchor, words.metal, words.turnbuckle, words.insulators],
    rows: byNumber(page, page.study.guys).map((g) => guyRow(page, g)),
  });
}

function guyRow(page: PageContext, g: StudyGuy): Row {
  return row(
    cell(numberOf(page, g.id)),
    cell(g.id, g.note),
    cell(partName(page, g.support)),
    cell(anchorText(page, g)),
    cell(g.metal ?? common.unknown),
    cell(sayIn(page, words.answers, { a: g.turnbuckle, b: g.bypass })),
    cell(g.insulators),
  );
}

/** As typed; bare coordinates with the unit in which the file counts them. */
function anchorText(page: PageContext, { typed }: StudyGuy): string {
  const { anchor } = typed;
  if (anchor === undefined) return common.unknown;
  return /^\[[-\d., ]+\]$/.test(anchor) ? `${anchor} ${page.study.site.units}` : anchor;
}
