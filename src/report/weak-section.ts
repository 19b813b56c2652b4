import { type WeakRow, weakRows } from '../drawing/weak-rows.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, listCell, paragraph, type Row, row, type Section, subheading, tableIfAny } from './block.ts';
import { type PageContext, partName, partNames, sayIn } from './page-context.ts';

const words = scheduleWords.weak;

/** What one failure undoes, rings that are open, and parts that nothing ties. */
export function weakSection(page: PageContext): Section {
  const found = weakRows(page.study);
  const table = tableIfAny({
    id: 'weak-table',
    look: 'wide',
    caption: words.caption,
    head: [
      words.number,
      words.at,
      sayIn(page, words.losesService),
      sayIn(page, words.losesEarth),
      sayIn(page, words.electrodesLost),
    ],
    rows: found.map((r) => weakRow(page, r)),
  });
  const start = paragraph(found.length === 0 ? words.none : words.intro);
  return { id: 'weak', heading: words.heading, blocks: [start, ...table, ...rings(page), ...loose(page)] };
}

function weakRow(page: PageContext, { mark, points }: WeakRow): Row {
  const [first] = points;
  const unsure = first!.certain ? [] : [words.perhaps];
  return row(
    cell(mark),
    listCell([...bySight(page, points), ...unsure]),
    cell(namesOrDash(page, first!.losesService)),
    cell(namesOrDash(page, first!.losesEarth)),
    cell(namesOrDash(page, first!.electrodesLost)),
  );
}

/** A line for each answer to whether a failure would be seen. */
function bySight(page: PageContext, points: WeakRow['points']): readonly string[] {
  return Object.entries(words.noticedHow).flatMap(([noticed, says]) => {
    const same = points.filter((w) => (Object.hasOwn(words.noticedHow, w.noticed) ? w.noticed : 'unknown') === noticed);
    const list = partNames(
      page,
      same.map((w) => w.at),
    );
    return same.length === 0 ? [] : [sayIn(page, says, { list })];
  });
}

function namesOrDash(page: PageContext, ids: readonly string[]): string {
  return ids.length === 0 ? '–' : partNames(page, ids);
}

function rings(page: PageContext): readonly Block[] {
  const { openRings } = page.study.bonding;
  if (openRings.length === 0) return [];
  const items = openRings.map((r) => sayIn(page, words.ring, { at: partName(page, r.at), why: r.why }));
  return [subheading(words.rings), { is: 'list', ordered: false, items }];
}

function loose(page: PageContext): readonly Block[] {
  const { tiedToNothing } = page.study.bonding;
  if (tiedToNothing.length === 0) return [];
  return [paragraph(sayIn(page, words.tiedToNothing, { list: partNames(page, tiedToNothing) }))];
}
