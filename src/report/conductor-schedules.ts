import type { Study } from '../study/study.ts';
import { formatQuantity } from '../units/format.ts';
import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, listCell, type Row, row, tableIfAny } from './block.ts';
import { figure, kindName, noteOf, numberOf, type PageContext, partName, partNames, sayIn } from './page-context.ts';
import { byNumber } from './part-schedules.ts';

const words = scheduleWords.schedules;
const common = pageWords.page;

export function conductorSchedule(page: PageContext): readonly Block[] {
  return tableIfAny({
    id: 'schedule-conductors',
    look: 'wide',
    caption: words.conductors,
    head: [common.number, common.name, words.run, words.wire, words.length, words.ohmAndHenry, words.laid],
    rows: byNumber(page, page.study.conductors).map((c) => conductorRow(page, c)),
  });
}

function conductorRow(page: PageContext, c: Study['conductors'][number]): Row {
  const bends = c.bendsDeg === 0 ? null : sayIn(page, words.bends, { sumDeg: c.bendsDeg });
  return row(
    cell(numberOf(page, c.id)),
    cell(c.id, kindName(page, c.role), noteOf(page, c.id)),
    listCell([partName(page, c.from), partName(page, c.to)]),
    cell(c.wire ?? common.unknown, sectionOf(page, c)),
    cell(figure(page, c.lengthM, 'length')),
    listCell([figure(page, c.resistanceOhm, 'resistance'), figure(page, c.inductanceH, 'inductance')]),
    cell(soilText(c.buried), bends),
  );
}

/** The section, without repeating a gauge that was typed. */
function sectionOf(page: PageContext, { wire, areaM2 }: Study['conductors'][number]): string | null {
  if (areaM2 === null) return null;
  const gauge = formatQuantity(areaM2, 'area', 'us');
  return gauge !== null && wire?.includes(gauge) ? formatQuantity(areaM2, 'area', 'si') : figure(page, areaM2, 'area');
}

/** Joints alike in every column share a row; each stands in it with its number. */
export function jointSchedule(page: PageContext): readonly Block[] {
  const byEntries = new Map<string, Joint[]>();
  for (const j of byNumber(page, page.study.joints)) {
    const key = JSON.stringify([j.kind, j.resistanceOhm, j.listed, j.forBurial, j.buried, j.accessible, j.condition]);
    byEntries.set(key, [...(byEntries.get(key) ?? []), j]);
  }
  return tableIfAny({
    id: 'schedule-joints',
    look: 'wide',
    caption: words.joints,
    head: [common.kind, words.joints, words.resistance, sayIn(page, words.marks), words.reachable, words.state],
    rows: [...byEntries.values()].map((same) => jointRow(page, same)),
  });
}

type Joint = Study['joints'][number];

function jointRow(page: PageContext, same: readonly Joint[]): Row {
  const [j] = same;
  return row(
    cell(kindName(page, j!.kind)),
    cell(same.map((one) => jointName(page, one)).join(', ')),
    cell(figure(page, j!.resistanceOhm, 'resistance')),
    cell(sayIn(page, words.answers, { a: j!.listed, b: j!.forBurial })),
    cell(sayIn(page, words.answers, { a: j!.buried, b: j!.accessible })),
    cell(j!.condition),
  );
}

/** A joint at a wire's end says by its name what it holds and where; one with a name of its own has to say it. */
function jointName(page: PageContext, j: Joint): string {
  const name = partName(page, j.id);
  const note = noteOf(page, j.id);
  if (j.id.includes(':')) return name;
  const on = j.on === null ? [] : [`${words.on.toLowerCase()} ${partName(page, j.on)}`];
  const holds = j.holds.length === 0 ? [] : [sayIn(page, words.holding, { list: partNames(page, j.holds) })];
  const about = [...on, ...holds, ...(note === null ? [] : [note])].join('; ');
  return about === '' ? name : `${name} (${about})`;
}

export function arresterSchedule(page: PageContext): readonly Block[] {
  return tableIfAny({
    id: 'schedule-arresters',
    look: 'wide',
    caption: sayIn(page, words.arresters),
    head: [
      common.number,
      common.name,
      common.kind,
      words.linesServed,
      words.lead,
      words.sparkover,
      words.bonded,
      sayIn(page, words.isListed),
    ],
    rows: byNumber(page, page.study.arresters).map((a) => arresterRow(page, a)),
  });
}

function arresterRow(page: PageContext, a: Study['arresters'][number]): Row {
  const on = a.on === null ? null : `${words.on.toLowerCase()} ${partName(page, a.on)}`;
  return row(
    cell(numberOf(page, a.id)),
    cell(a.id, on, a.where, noteOf(page, a.id)),
    cell(kindName(page, a.kind)),
    cell(a.lines.length === 0 ? words.nothing : partNames(page, a.lines)),
    cell(figure(page, a.leadM, 'length')),
    cell(figure(page, a.sparkoverV, 'voltage')),
    cell(a.bonded),
    cell(a.listed),
  );
}

function soilText(buried: string): string {
  return buried === 'yes' || buried === 'no' ? words.inSoil[buried] : words.inSoil.unknown;
}
