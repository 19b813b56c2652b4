import { describe, expect, it } from 'vitest';
import { compareStudies } from '../../src/compare/compare-studies.ts';
import type { StateRow } from '../../src/compare/state-table.ts';
import { tabulateStates } from '../../src/compare/tabulate-states.ts';
import { studyOfText, textOf } from './study-of-text.ts';

const text = textOf('examples/marl-hill/marl-hill-after.site.yaml');
const typed = studyOfText(text);
const storm = studyOfText(text, { state: 'storm' });
const winter = studyOfText(text, { state: 'winter' });
const table = tabulateStates([typed, storm, winter]);
const rows = <W extends StateRow['what']>(what: W) =>
  table.rows.filter((row): row is Extract<StateRow, { what: W }> => row.what === what);

describe('states of one site in one table', () => {
  it('has every answer of each state, in the order asked for', () => {
    expect(table.columns.map((c) => c.id)).toEqual(['as typed', 'storm', 'winter']);
    expect(table.columns[2]!.ground).toEqual({ frozen: 'yes', dry: 'unknown', wet: 'unknown' });
    expect(table.columns.map((c) => c.unbondedElectrodes)).toEqual([[], [], []]);
    expect(table.columns[1]!.says).toBe('coax off at the plate and on the grounded receptacles below it');
  });

  it('takes from a box what is pulled, and leaves everything else that reaches it', () => {
    // line3 ends in plug j3 before the radio; its bond, its supply and what comes over that stay
    const radio = rows('reach').find((row) => row.at === 'vhf-radio')!;
    const lines = radio.cells.map((ways) => ways.map((w) => w.line));
    expect(lines[0]).toContain('line3');
    expect(lines[1]).not.toContain('line3');
    expect(lines[1]).toEqual(lines[0]!.filter((line) => line !== 'line3'));
    expect(lines[1]!.length).toBeGreaterThan(1);
    expect(lines[2]).toEqual(lines[0]);
  });

  it('states what each gap withstands: twelve inches at 5 kV a centimetre are 152.4 kV', () => {
    expect(rows('gap').map((row) => [row.at, row.line])).toEqual([
      ['j1', 'line1'],
      ['j2', 'line2'],
      ['j3', 'line3'],
      ['j4', 'line4'],
    ]);
    for (const { cells } of rows('gap')) {
      expect([cells[0], cells[2]]).toEqual([null, null]);
      expect(cells[1]!.end).toBe('grounded');
      expect(cells[1]!.withstandV!.low).toBeCloseTo(152400, 3);
    }
  });

  it('says where nothing was typed that nobody knows', () => {
    const bare = text.replaceAll(', gap: 12 in, end: grounded', '');
    const { columns } = tabulateStates([studyOfText(bare, { state: 'storm' })]);
    expect(columns[0]!.gaps.map((g) => [g.gapM, g.withstandV, g.end])).toEqual(Array(4).fill([null, null, 'unknown']));
  });

  it('has the resistance of frozen ground beside that of the ground as it is', () => {
    const [row] = rows('earthOhm');
    expect(row!.cells[2]!.high!).toBeGreaterThan(row!.cells[0]!.high!);
    expect(row!.cells[1]).toEqual(row!.cells[0]);
  });

  it('is empty for a state that changes nothing', () => {
    const same = studyOfText(text.replace(/states:\n/, 'states:\n  again: {says: the same}\n'), { state: 'again' });
    expect(tabulateStates([typed, same]).rows).toEqual([]);
  });
});

describe('two states compared', () => {
  const c = compareStudies(typed, storm);

  it('differ in no part, and in what reaches the boxes', () => {
    const { pairs: _, ...parts } = c.parts;
    expect(Object.values(parts).flat()).toEqual([]);
    const gone = c.reach.flatMap((row) => row.gone.map((way) => way.line));
    expect([...new Set(gone)].sort()).toEqual(['line1', 'line2', 'line3', 'line4']);
  });

  it('know which state is which', () => {
    expect([c.before.state.id, c.after.state.id]).toEqual(['as typed', 'storm']);
  });
});
