import type { SheetFacts } from '../rework/sheet/sheet-facts.ts';
import type { Step } from '../rework/work.ts';
import type { Bounded, Study } from '../study/study.ts';
import { formatQuantity } from '../units/format.ts';
import { add, type Interval } from '../units/interval.ts';
import { earthOhmText } from '../words/earth-ohm.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { type Block, cell, type Row, row, tableIfAny } from './block.ts';
import { partName, sayIn } from './page-context.ts';
import { receptacleRows } from './sheet-receptacles.ts';
import type { WorksContext } from './works-context.ts';

const words = sheetWords.test;

/** Readings to take when a work is done, each with what the study of the finished site lets expect. */
export function testBlocks(page: WorksContext, step: Step, facts: SheetFacts, number: string): readonly Block[] {
  const earth = isInSoil(step) ? [earthRow(page, step)] : [];
  const rows = [
    ...aloneRows(page, step, facts),
    ...facts.conductors.map((c) => continuityRow(page, c)),
    ...jointRows(page, facts),
    ...deviceRows(page, facts),
    ...receptacleRows(page, step),
    ...earth,
  ];
  const shown = rows.length === 0 ? [lookRow(page, step)] : rows;
  const caption = sayIn(page, words.caption, { number });
  const head = [words.measure, words.between, words.expected, words.read, words.by];
  const table = tableIfAny({ id: `readings-${number}`, caption, head, rows: shown, look: 'signatures' });
  return table;
}

/** Works that change what the electrodes have to the soil. */
function isInSoil({ work }: Step): boolean {
  return ['bond', 'add-rods', 'deepen-rod', 'close-ring'].includes(work.kind);
}

/** New rods, each by itself: that cannot be read any more once it is tied. */
function aloneRows(page: WorksContext, { work }: Step, { electrodes }: SheetFacts): readonly Row[] {
  const added = work.changes.flatMap((c) => (c.is === 'add' && c.section === 'electrodes' ? [c.id] : []));
  const rods = work.kind === 'add-rods' ? electrodes.filter((e) => added.includes(e.id)) : [];
  return rods.map(({ id }) => {
    const alone = page.study.earth.electrodes.find((e) => e.id === id)?.aloneOhm ?? null;
    const says = earthText(alone) ?? words.unknown;
    return row(cell(sayIn(page, words.alone)), cell(partName(page, id)), cell(says), cell(), cell());
  });
}

/** End to end: the conductor and a joint at each end. */
function continuityRow(page: WorksContext, c: SheetFacts['conductors'][number]): Row {
  const joints = page.study.joints.filter((j) => j.holds.includes(c.id));
  const all = [c.resistanceOhm, ...joints.map((j) => j.resistanceOhm)];
  const between = [partName(page, c.from), partName(page, c.to)].join(' – ');
  return row(cell(words.continuity), cell(between), cell(expected(page, total(all))), cell(), cell());
}

/** Joints of conductors that stay. */
function jointRows(page: WorksContext, { joints, conductors, arresters }: SheetFacts): readonly Row[] {
  const told = new Set([...conductors, ...arresters].map((x) => x.id));
  const others = joints.filter((j) => !told.has(j.id.split(':', 1)[0]!) && !j.holds.some((h) => told.has(h)));
  return others.map((j) => {
    const between = [...j.holds.map((h) => partName(page, h)), ...(j.on === null ? [] : [partName(page, j.on)])];
    return row(cell(words.joint), cell(between.join(' – ')), cell(expected(page, j.resistanceOhm)), cell(), cell());
  });
}

/** A device from its case to what it is mounted on. */
function deviceRows(page: WorksContext, { arresters }: SheetFacts): readonly Row[] {
  return arresters.flatMap((a) => {
    if (a.on === null) return [];
    const between = [partName(page, a.id), partName(page, a.on)].join(' – ');
    return [
      row(cell(words.continuity), cell(between), cell(expected(page, mountOhm(page.study, a.id))), cell(), cell()),
    ];
  });
}

/** Of the joint by which it is mounted; null where it has none of its own. */
function mountOhm({ joints }: Study, arrester: string): Interval | null {
  return joints.find((j) => j.id.startsWith(`${arrester}:`) || j.holds.includes(arrester))?.resistanceOhm ?? null;
}

function total(all: readonly (Interval | null)[]): Interval | null {
  return all.reduce((sum, r) => (sum === null || r === null ? null : add(sum, r)), {
    low: 0,
    high: 0,
  } as Interval | null);
}

function expected(page: WorksContext, ohm: Interval | null): string {
  if (ohm === null || !Number.isFinite(ohm.high)) return words.unknown;
  const low = Math.max(ohm.low, leastReadOhm);
  if (ohm.high <= low) {
    return sayIn(page, words.most, { figure: formatQuantity(low, 'resistance', 'si', { digits: 2 }) });
  }
  if (ohm.high < low * narrow) {
    return sayIn(page, words.about, { figure: formatQuantity(ohm.high, 'resistance', 'si', { digits: 2 }) });
  }
  const range = formatQuantity({ low, high: ohm.high }, 'resistance', 'si', { digits: 2 });
  return sayIn(page, words.least, { range });
}

/** Ends that differ by less read as one figure. */
const narrow = 1.2;

/** What a low-resistance ohmmeter still tells from nothing. */
const leastReadOhm = 1e-3;

function earthRow(page: WorksContext, { inTurn }: Step): Row {
  const range = earthText(page.study.earth.resistanceOhm);
  const now = formatQuantity(inTurn.earthOhm.after, 'resistance', 'si', { digits: 2 });
  const says =
    range === null
      ? words.unknown
      : now === null
        ? sayIn(page, words.earthRange, { range })
        : sayIn(page, words.earthNow, { range, now });
  return row(cell(sayIn(page, words.earth)), cell(partName(page, page.study.site.service)), cell(says), cell(), cell());
}

/** Soil is known to two figures at best. */
export function earthText(ohm: Bounded | null): string | null {
  return earthOhmText(ohm, 2);
}

function lookRow(page: WorksContext, { work }: Step): Row {
  return row(
    cell(words.looked),
    cell(work.at.map((p) => partName(page, p)).join(', ')),
    cell(words.look),
    cell(),
    cell(),
  );
}
