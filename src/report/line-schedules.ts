import type { Study } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, type Row, row, tableIfAny } from './block.ts';
import { kindName, noteOf, numberOf, type PageContext, partName, partNames, sayIn } from './page-context.ts';
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
  const first = [
    cell(numberOf(page, line.id)),
    cell(line.id, kindName(page, line.kind), stops, noteOf(page, line.id)),
  ] as const;
  if (line.conductors.length === 0) return [row(...first, cell('–'), cell('–'), cell('–'), cell('–'))];
  return alike(line.conductors).map((same, i) => {
    const [c] = same;
    return row(
      first[0],
      i === 0 ? first[1] : cell(line.id),
      cell(same.map((s) => conductorName(page, s.which, s.count)).join(', ')),
      cell(namesOrNothing(page, c!.bondedAt)),
      cell(namesOrNothing(page, c!.protectedBy), without(page, c!)),
      cell(namesOrNothing(page, c!.drainedBy)),
    );
  });
}

/** Conductors with the same entries in every column share a row. */
function alike(conductors: Line['conductors']): readonly (readonly Line['conductors'][number][])[] {
  const byEntries = new Map<string, Line['conductors'][number][]>();
  for (const c of conductors) {
    const short = c.protectedBy.length > 0 ? [c.unprotected, c.count] : [];
    const key = JSON.stringify([c.bondedAt, c.protectedBy, c.drainedBy, short]);
    byEntries.set(key, [...(byEntries.get(key) ?? []), c]);
  }
  return [...byEntries.values()];
}

function without(page: PageContext, c: Line['conductors'][number]): string | null {
  if (c.unprotected === null || c.unprotected === 0 || c.protectedBy.length === 0) return null;
  return sayIn(page, words.unprotected, { n: String(c.unprotected), count: String(c.count) });
}

export function crossingSchedule(page: PageContext): readonly Block[] {
  const rows = byNumber(page, page.study.lines).flatMap((l) => crossingRows(page, l));
  return tableIfAny({
    id: 'schedule-crossings',
    look: 'wide',
    caption: words.crossings,
    head: [common.number, common.name, words.building, words.between, words.conductor, words.protector, words.bondedTo],
    rows,
  });
}

type Crossing = Line['crossings'][number];

/** Conductors that come through a wall at the same place, with the same protector and bond, share a row. */
function crossingRows(page: PageContext, line: Line): readonly Row[] {
  const byPlace = new Map<string, Crossing[]>();
  for (const c of line.crossings) {
    const key = JSON.stringify([c.building, c.certain, c.after, c.before, c.protector, c.bondedTo]);
    byPlace.set(key, [...(byPlace.get(key) ?? []), c]);
  }
  return [...byPlace.values()].map((same) => crossingRow(page, line, same));
}

function crossingRow(page: PageContext, line: Line, same: readonly Crossing[]): Row {
  const { building, certain, after, before, protector, bondedTo } = same[0]!;
  return row(
    cell(numberOf(page, line.id)),
    cell(line.id),
    cell(building, certain ? null : words.uncertain),
    cell(`${stopName(page, after)} → ${stopName(page, before)}`),
    cell(same.map((c) => conductorName(page, c.which, c.count)).join(', ')),
    cell(protector === null ? words.nothing : partName(page, protector)),
    cell(bondedTo === null ? words.nothing : partName(page, bondedTo)),
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
