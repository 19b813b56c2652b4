import type { Study } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, type Row, row, tableIfAny } from './block.ts';
import { kindName, numberOf, type PageContext, partName, partNames, sayIn } from './page-context.ts';
import { byNumber } from './part-schedules.ts';

const words = scheduleWords.schedules;
const common = pageWords.page;
type Line = Study['lines'][number];

/** Each line once, a row for each kind of its conductors; a line without any has one row that says so. */
export function lineSchedule(page: PageContext): readonly Block[] {
  return tableIfAny({
    id: 'schedule-lines',
    look: 'wide',
    caption: words.lines,
    head: [common.number, words.stops, words.conductor, words.bondedAt, words.protectedBy, words.drainedBy],
    rows: byNumber(page, page.study.lines).flatMap((l) => lineRows(page, l)),
  });
}

function lineRows(page: PageContext, line: Line): readonly Row[] {
  const stops = line.stops.map((s) => stopName(page, s)).join(' → ');
  const first = [cell(numberOf(page, line.id)), cell(line.id, kindName(page, line.kind), stops)] as const;
  if (line.conductors.length === 0) return [row(...first, cell('–'), cell('–'), cell('–'), cell('–'))];
  return line.conductors.map((c, i) =>
    row(
      first[0],
      i === 0 ? first[1] : cell(line.id),
      cell(conductorName(page, c.which, c.count)),
      cell(namesOrNothing(page, c.bondedAt)),
      cell(namesOrNothing(page, c.protectedBy), without(page, c)),
      cell(namesOrNothing(page, c.drainedBy)),
    ),
  );
}

function without(page: PageContext, c: Line['conductors'][number]): string | null {
  if (c.unprotected === null || c.unprotected === 0 || c.protectedBy.length === 0) return null;
  return sayIn(page, words.unprotected, { n: String(c.unprotected), count: String(c.count) });
}

export function crossingSchedule(page: PageContext): readonly Block[] {
  const rows = byNumber(page, page.study.lines).flatMap((l) => l.crossings.map((c) => crossingRow(page, l, c)));
  return tableIfAny({
    id: 'schedule-crossings',
    look: 'wide',
    caption: words.crossings,
    head: [common.number, common.name, words.building, words.between, words.conductor, words.protector, words.bondedTo],
    rows,
  });
}

function crossingRow(page: PageContext, line: Line, c: Line['crossings'][number]): Row {
  return row(
    cell(numberOf(page, line.id)),
    cell(line.id),
    cell(c.building, c.certain ? null : words.uncertain),
    cell(`${stopName(page, c.after)} → ${stopName(page, c.before)}`),
    cell(conductorName(page, c.which, c.count)),
    cell(c.protector === null ? words.nothing : partName(page, c.protector)),
    cell(c.bondedTo === null ? words.nothing : partName(page, c.bondedTo)),
  );
}

/** `bond tower@48 ft`, `plug j1` and `bend` keep their first word, so that it is seen what the stop is. */
function stopName(page: PageContext, stop: string): string {
  const [, word, point] = /^(bond|bend) (.+)$/.exec(stop) ?? [];
  return word === undefined ? partName(page, stop) : `${word} ${partName(page, point!)}`;
}

function conductorName(page: PageContext, which: keyof typeof words.which, count: number): string {
  const name = sayIn(page, words.which[which]);
  return count > 1 ? `${count} × ${name}` : name;
}

function namesOrNothing(page: PageContext, ids: readonly string[]): string {
  return ids.length === 0 ? words.nothing : partNames(page, ids);
}
