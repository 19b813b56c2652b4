import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { type Few, siteOf } from './site-of.ts';

/** `a b kind part`, with a question mark where the tie may be there or not. */
function ties(few: Few, state: string | null = null): readonly string[] {
  const found = bondingOf(siteOf(few), state).bonding.ties;
  return found.map((t) => `${t.a} ${t.b} ${t.kind} ${t.part}${t.is === 'unknown' ? '?' : ''}`);
}

describe('conductors', () => {
  test('a wire with its two joints is one tie', () => {
    const few: Few = { electrodes: { rod: {} }, bars: { bar: {} }, conductors: { c1: { from: 'bar', to: 'rod' } } };
    expect(ties(few)).toEqual(['bar rod metal c1']);
  });

  test('two wires under one named clamp are each tied to what the clamp is on', () => {
    const few: Few = {
      electrodes: { rod: {} },
      bars: { bar: {}, entry: {} },
      joints: { clamp: { on: 'rod' } },
      conductors: {
        c1: { from: 'bar', to: 'rod', joints: [{}, { named: 'clamp' }] },
        c2: { from: 'entry', to: 'clamp' },
      },
    };
    expect(ties(few)).toEqual(['bar rod metal c1', 'entry rod metal c2']);
  });

  test('a wire that passes clamps ties each part to the next', () => {
    const few: Few = {
      electrodes: { R1: {}, R2: {}, R3: {} },
      bars: { bar: {} },
      conductors: { c1: { from: 'bar', passes: ['R1', 'R2'], to: 'R3' } },
    };
    expect(ties(few)).toEqual(['R1 R2 metal c1', 'R1 bar metal c1', 'R2 R3 metal c1']);
  });

  test('a splice in the wire is inside the tie; a clamp that is open ties nothing', () => {
    const spliced: Few = {
      electrodes: { rod: {} },
      bars: { bar: {} },
      conductors: { c1: { from: 'bar', to: 'rod', joints: ['bolted lug', 'twist', 'rod clamp'] } },
    };
    expect(ties(spliced)).toEqual(['bar rod metal c1']);
    const open: Few = {
      ...spliced,
      conductors: { c1: { from: 'bar', to: 'rod', joints: [{}, { condition: 'open' }] } },
    };
    expect(ties(open)).toEqual([]);
  });

  test('three wires that meet in the air are each tied to the nearest part', () => {
    // clamp is on nothing. A, B and C are one wire away from it; it goes to the first of them, A. Over c2 lies B, over c3 C; c1 is on both.
    const few: Few = {
      electrodes: { A: {}, B: {}, C: {} },
      joints: { clamp: {} },
      conductors: {
        c1: { from: 'A', to: 'clamp' },
        c2: { from: 'B', to: 'clamp' },
        c3: { from: 'C', to: 'clamp' },
      },
    };
    expect(ties(few)).toEqual(['A B metal c1', 'A B metal c2', 'A C metal c1', 'A C metal c3']);
  });

  test('an end that goes nobody knows where ties nothing; a wire that may be there ties perhaps', () => {
    const few: Few = {
      electrodes: { rod: {} },
      bars: { bar: {} },
      conductors: { c1: { from: 'bar', to: 'unknown' }, c2: { from: 'bar', to: 'rod', present: 'unknown' } },
    };
    expect(ties(few)).toEqual(['bar rod metal c2?']);
  });
});

describe('mounts', () => {
  test('bolted parts, antennas that touch, and bonds that nobody described are made by the part itself', () => {
    const few: Few = {
      service: 'panel',
      supports: { tower: { kind: 'lattice tower' } },
      antennas: {
        beam: { on: 'tower@top', touchesSupport: 'yes' },
        whip: { on: 'tower@top', touchesSupport: 'unknown' },
        wire: { on: 'tower@top', touchesSupport: 'no' },
      },
      bars: { bar: {} },
      arresters: { a1: { kind: 'gas tube', on: 'bar' } },
      equipment: { panel: { kind: 'service panel' } },
      metalwork: { gas: { kind: 'gas pipe', bonded: 'unknown' } },
    };
    expect(ties(few)).toEqual([
      'a1 bar metal a1',
      'beam tower metal beam',
      'gas panel metal gas?',
      'tower whip metal whip?',
    ]);
  });

  test('a guy ties its support to the part that anchors it, perhaps where nobody knows of insulators', () => {
    const guys = (insulators: string): Few => ({
      electrodes: { anchor: {} },
      supports: {
        mast: {
          kind: 'mast',
          guys: [{ id: 'g1', anchor: 'anchor', metal: 'steel', turnbuckle: 'no', bypass: 'unknown', insulators }],
        },
      },
    });
    expect(ties(guys('no'))).toEqual(['anchor mast guy mast']);
    expect(ties(guys('unknown'))).toEqual(['anchor mast guy mast?']);
    expect(ties(guys('yes'))).toEqual([]);
  });
});

const line: Few = {
  supports: { tower: { kind: 'lattice tower' } },
  antennas: { beam: { dcPath: 'yes' } },
  bars: { entry: {} },
  arresters: { a1: { kind: 'gas tube', on: 'entry' } },
  equipment: { radio: { kind: 'transceiver' } },
  lines: { coax: { kind: 'coax', path: ['beam', { bond: 'tower@base' }, 'a1', { plug: 'j1' }, 'radio'] } },
  states: { storm: { open: ['j1'] } },
};

describe('lines', () => {
  test('a shield from each thing that it meets to the next; a core by what takes it at its ends', () => {
    // Core: joined at the antenna for static, past the tower, by a gap at the arrester, and through the plug to the
    // radio. Each stretch is as good as its weaker end: a gap on both, which the arrester makes.
    expect(ties(line)).toEqual([
      'a1 beam gap a1',
      'a1 entry metal a1',
      'a1 radio gap a1',
      'a1 radio shield coax',
      'a1 tower shield coax',
      'beam tower shield coax',
    ]);
  });

  test('with the plug pulled, a gap of the line is all that is left beyond it', () => {
    expect(ties(line, 'storm')).toEqual([
      'a1 beam gap a1',
      'a1 entry metal a1',
      'a1 radio gap a1',
      'a1 radio gap coax',
      'a1 tower shield coax',
      'beam tower shield coax',
    ]);
  });

  test('cord, feeder and core of the mains are three ties by their own lines', () => {
    const mains: Few = {
      equipment: { panel: { kind: 'service panel' }, sub: { kind: 'sub-panel' }, radio: {} },
      lines: {
        feeder: { kind: 'mains', path: ['panel', 'sub'], protectiveConductor: 'yes' },
        outlet: { kind: 'mains', path: ['sub', 'radio'], protectiveConductor: 'unknown' },
      },
    };
    expect(ties(mains)).toEqual([
      'panel sub core feeder',
      'panel sub feeder feeder',
      'radio sub cord outlet?',
      'radio sub core outlet',
    ]);
  });

  test('a protector between two points is a gap of its own', () => {
    const few: Few = { electrodes: { A: {}, B: {} }, arresters: { gap: { kind: 'spark gap', between: ['A', 'B'] } } };
    expect(ties(few)).toEqual(['A B gap gap']);
  });
});

test('the order in which a file lists its parts changes nothing', () => {
  const turned = Object.fromEntries(
    Object.entries(line).map(([section, parts]) => [section, Object.fromEntries(Object.entries(parts).reverse())]),
  );
  expect(ties(turned)).toEqual(ties(line));
});
