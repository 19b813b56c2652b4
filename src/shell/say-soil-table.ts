import { conditionName, percent } from '../drawing/chart-names.ts';
import { seasonSubjects } from '../drawing/season-subjects.ts';
import { unknownJointOhm } from '../materials/joints.ts';
import type { Bounded } from '../study/study-earth.ts';
import { soilCommandWords } from '../words/soil-command-words.ts';
import { isSoilKnown } from './say-soil-ground.ts';
import { bullet, headed, ohmOf, type SoilPage } from './soil-page.ts';

const words = soilCommandWords.table;

/** A row of the table: a figure for each condition, or a line between (no cells). */
interface Row {
  readonly label: string;
  readonly cells: readonly string[];
}

/** The whole, each group and each electrode to remote earth, now and in each condition. */
export function resistanceBlock(page: SoilPage): string {
  const { electrodes, conditions } = page.study.earth;
  if (electrodes.length === 0)
    return headed(page, soilCommandWords.headings.resistance, [
      bullet(page, page.sentence(soilCommandWords.noElectrodes)),
    ]);
  const alone = aloneRows(page);
  const rows = [...groupRows(page, alone), ...alone, ...shareRows(page)];
  if (rows.length === 0) return headed(page, soilCommandWords.headings.resistance, noFigures(page));
  const head = conditions.map((c) => conditionName(c.id));
  const table = inPieces(head, rows, page.terminal.width);
  return headed(page, soilCommandWords.headings.resistance, [...table, ...notes(page), ...noFigures(page)]);
}

/** The whole and each group; a group whose figures stand there already, as those of the whole or of its one electrode, not again. */
function groupRows(page: SoilPage, alone: readonly Row[]): readonly Row[] {
  const told = new Set(alone.map((r) => r.cells.join('|')));
  const subjects = seasonSubjects(page.study);
  const hasWhole = subjects.some((s) => s.group === null);
  return subjects
    .map(({ group, conditions }) => ({
      label: page.sentence(group === null ? words.whole : words.group, { group }),
      cells: conditions.map((c) => cellOf(c.ohm)),
      of: page.study.bonding.groups.find((g) => g.id === group),
    }))
    .filter(isTold)
    .filter(({ cells, of }) => {
      const isSingle = of?.electrodes.length === 1 && told.has(cells.join('|'));
      return !isSingle && !(hasWhole && of?.hasService === true);
    });
}

function aloneRows(page: SoilPage): readonly Row[] {
  const { electrodes, conditions } = page.study.earth;
  const rows = electrodes
    .map(({ id }) => ({
      label: page.sentence('  {id}', { id }),
      cells: conditions.map((c) => cellOf(c.electrodes.find((e) => e.id === id)?.aloneOhm ?? null)),
    }))
    .filter(isTold);
  return rows.length === 0 ? [] : [{ label: words.alone, cells: [] }, ...rows];
}

function shareRows(page: SoilPage): readonly Row[] {
  const { electrodes, conditions } = page.study.earth;
  const shareIn = (id: string) => conditions.map((c) => c.electrodes.find((e) => e.id === id)?.currentShare ?? null);
  const rows = electrodes
    .map(({ id }) => ({ id, shares: shareIn(id) }))
    .filter(({ shares }) => shares.some((s) => s !== null))
    .map(({ id, shares }) => ({
      label: page.sentence('  {id}', { id }),
      cells: shares.map((s) => (s === null ? words.unknown : percent(s))),
    }));
  return rows.length < 2 ? [] : [{ label: words.share, cells: [] }, ...rows];
}

function isTold({ cells }: Row): boolean {
  return cells.some((cell) => cell !== words.unknown);
}

/** The unit stands in the heading; what is large or small has its own. */
function cellOf(ohm: Bounded | null): string {
  return (ohmOf(ohm) ?? words.unknown).replace(/ ohm$/, '');
}

/** As many columns beside each other as the terminal has room for, the rest below. */
function inPieces(head: readonly string[], rows: readonly Row[], width: number): readonly string[] {
  const most = Math.max(12, Math.floor(width / 3));
  const labels = rows.filter((r) => r.cells.length > 0 && r.label.length <= most).map((r) => r.label.length);
  const labelWidth = Math.max(8, ...labels) + 2;
  const widths = head.map((name, i) => Math.max(name.length, ...rows.map((r) => r.cells[i]?.length ?? 0)) + 2);
  const pieces: number[][] = [[]];
  let used = labelWidth;
  head.forEach((_, i) => {
    const last = pieces.at(-1)!;
    if (last.length > 0 && used + widths[i]! - 2 > width) {
      pieces.push([i]);
      used = labelWidth + widths[i]!;
    } else {
      last.push(i);
      used += widths[i]!;
    }
  });
  return pieces.flatMap((columns, at) => [
    ...(at === 0 ? [] : ['']),
    lineOf(
      '',
      columns.map((i) => head[i]!),
      columns.map((i) => widths[i]!),
      labelWidth,
    ),
    ...rows.flatMap((r) => rowLines(r, columns, widths, labelWidth)),
  ]);
}

/** A label too long for its column stands on a line of its own. */
function rowLines({ label, cells }: Row, columns: readonly number[], widths: readonly number[], labelWidth: number) {
  if (cells.length === 0) return [label];
  const [own, inLine] = label.length + 2 > labelWidth ? [[label], ''] : [[], label];
  return [
    ...own,
    lineOf(
      inLine,
      columns.map((i) => cells[i]!),
      columns.map((i) => widths[i]!),
      labelWidth,
    ),
  ];
}

function lineOf(label: string, cells: readonly string[], widths: readonly number[], labelWidth: number): string {
  return `${label.padEnd(labelWidth)}${cells.map((cell, i) => cell.padEnd(widths[i]!)).join('')}`.trimEnd();
}

/** Electrodes of which nothing is known, each with what would settle it where that is known. Why one could not be solved stands among the limits. */
function noFigures(page: SoilPage): readonly string[] {
  const { conditions } = page.study.earth;
  const electrodes = page.study.earth.electrodes.filter((e) => e.how !== 'computed');
  const now = new Map(conditions[0]?.electrodes.map((e) => [e.id, e.aloneOhm]));
  const none = electrodes.filter((e) => cellOf(now.get(e.id) ?? null) === words.unknown).map((e) => e.id);
  const why = new Map(page.study.unknowns.map((u) => [u.path, u.why]));
  return none.flatMap((id) => {
    const said = why.get(`electrodes.${id}`);
    // that the soil is not known stands above
    if (said === undefined && !isSoilKnown(page)) return [];
    return bullet(
      page,
      page.sentence(said === undefined ? words.noFigure : words.noFigureSince, { id, why: said ?? null }),
    );
  });
}

/** What the conditions mean, what the ranges are, and of what no figure could be given. */
function notes(page: SoilPage): readonly string[] {
  const { sentence } = page;
  const { electrodes, conditions } = page.study.earth;
  const others = conditions
    .slice(1)
    .filter((c) => c.says !== c.id)
    .map((c) => sentence(words.condition, { id: conditionName(c.id), says: c.says }));
  const likely = conditions[0]?.resistanceOhm?.value ?? null;
  const stated = electrodes.filter((e) => e.how === 'stated').map((e) => e.id);
  const ohm = likely === null ? null : ohmOf({ value: likely, low: likely, high: likely });
  return [
    ...(ohm === null ? [] : [sentence(words.likely, { ohm, condition: conditionName(conditions[0]!.id) })]),
    ...(others.length === 0 ? [] : [sentence(words.conditions, { list: others.join('; ') })]),
    ...jointNote(page),
    ...(stated.length === 0 ? [] : [sentence(words.stated, { list: stated })]),
    ...(electrodes.some((e) => e.how === 'computed') ? [sentence(words.ranges)] : []),
  ].map((text) => bullet(page, text));
}

/** Why a group can have more than each of its electrodes alone. */
function jointNote({ study, sentence }: SoilPage): readonly string[] {
  const isOpen = study.joints.some((j) => j.kind === null && j.resistanceOhm === null);
  return isOpen ? [sentence(words.joints, { jointOhm: unknownJointOhm.high })] : [];
}
