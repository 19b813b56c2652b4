import type { OhmRow, Sides, UnbondedRow } from '../compare/comparison.ts';
import type { Bounded } from '../study/study.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { earthOhmText } from '../words/earth-ohm.ts';
import { type Block, cell, paragraph, type Row, row, type Section, tableIfAny } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { partName, sayIn } from './page-context.ts';

const words = compareReportWords.figures;

/** Resistances, electrodes outside the system, and groups, on both sides. */
export function compareFiguresSection(page: CompareContext): Section {
  return {
    id: 'figures',
    heading: words.heading,
    blocks: [paragraph(words.intro), ...wholeTable(page), ...electrodes(page), ...unbondedTable(page), ...groups(page)],
  };
}

/** Names on both sides, once where they have one number and name. */
export function bothNames(page: CompareContext, ids: Sides<string | null>): string {
  const names = [
    ids.before === null ? null : partName(page.before, ids.before),
    ids.after === null ? null : partName(page.after, ids.after),
  ].filter((n) => n !== null);
  return [...new Set(names)].join(' → ');
}

function wholeTable(page: CompareContext): readonly Block[] {
  const { resistanceOhm, withServicesOhm } = page.comparison.earth;
  const line = (name: string, ohm: Sides<Bounded | null>): Row =>
    row(cell(sayIn(page.after, name)), ohmCell(ohm.before), ohmCell(ohm.after));
  const isServed = withServicesOhm.before !== null || withServicesOhm.after !== null;
  const rows = [line(words.whole, resistanceOhm), ...(isServed ? [line(words.withServices, withServicesOhm)] : [])];
  return tableIfAny({
    id: 'figures-whole',
    caption: sayIn(page.after, words.caption),
    head: [words.figure, page.sides.before, page.sides.after],
    rows,
  });
}

function ohmCell(ohm: Bounded | null) {
  return cell(ohmText(ohm));
}

/** The bounds; not known where the only one is that of the metal. */
export function ohmText(ohm: Bounded | null): string {
  return earthOhmText(ohm) ?? words.notKnown;
}

function electrodes(page: CompareContext): readonly Block[] {
  const all = page.comparison.earth.electrodes;
  const side = (r: OhmRow, which: 'before' | 'after') =>
    r.id[which] === null ? cell(words.notThere) : ohmCell(r.ohm[which]);
  return tableIfAny({
    id: 'figures-electrodes',
    caption: sayIn(page.after, words.electrodes),
    head: [sayIn(page.after, words.electrode), page.sides.before, page.sides.after],
    rows: all.map((r) => row(cell(bothNames(page, r.id)), side(r, 'before'), side(r, 'after'))),
  });
}

function unbondedTable(page: CompareContext): readonly Block[] {
  const is = (r: UnbondedRow, which: 'before' | 'after') => cell(words.isUnbonded[r.is[which] ?? 'none']);
  return tableIfAny({
    id: 'figures-unbonded',
    caption: sayIn(page.after, words.unbonded),
    head: [sayIn(page.after, words.electrode), page.sides.before, page.sides.after],
    rows: page.comparison.unbonded.map((r) => row(cell(bothNames(page, r.id)), is(r, 'before'), is(r, 'after'))),
  });
}

function groups(page: CompareContext): readonly Block[] {
  const all = page.comparison.groups;
  const differing = all.filter((g) => g.standing !== 'same');
  const entry = (g: (typeof all)[number], which: 'before' | 'after') =>
    cell(
      g.id[which] === null
        ? words.notThere
        : sayIn(page.after, words.groupEntry, {
            parts: g.parts[which],
            electrodes: g.electrodes[which].length,
            service: g.hasService[which] === true ? sayIn(page.after, words.groupService) : '',
          }),
    );
  const table = tableIfAny({
    id: 'figures-groups',
    caption: words.groups,
    head: [words.group, page.sides.before, page.sides.after],
    rows: differing.map((g) => row(cell(bothNames(page, g.id)), entry(g, 'before'), entry(g, 'after'))),
  });
  return [...table, ...sameNote(page, all.length - differing.length)];
}

/** How many rows a table leaves out because they are as before. */
export function sameNote(page: CompareContext, count: number): readonly Block[] {
  return count === 0 ? [] : [paragraph(sayIn(page.after, words.sameRows, { n: String(count) }))];
}
