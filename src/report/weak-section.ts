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
    listCell([...points.map((w) => pointText(page, w)), ...unsure]),
    cell(namesOrDash(page, first!.losesService)),
    cell(namesOrDash(page, first!.losesEarth)),
    cell(namesOrDash(page, first!.electrodesLost)),
  );
}

function pointText(page: PageContext, w: WeakRow['points'][number]): string {
  return sayIn(page, words.point, {
    at: partName(page, w.at),
    kind: words.kind[w.kind],
    noticed: noticedText(w.noticed),
  });
}

function noticedText(noticed: string): string {
  const texts: Readonly<Record<string, string>> = words.noticedHow;
  return texts[noticed] ?? words.noticedHow.unknown;
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
