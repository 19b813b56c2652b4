import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { type Few, siteOf } from './site-of.ts';

/** `box: line < from, …` for each row that has any. */
function reach(few: Few, state: string | null = null): Readonly<Record<string, readonly string[]>> {
  const rows = bondingOf(siteOf(few), state).bonding.reach;
  return Object.fromEntries(rows.map((row) => [row.part, row.by.map(({ line, from }) => `${line} < ${from}`)]));
}

const shack: Few = {
  service: 'panel',
  electrodes: { rod: { kind: 'rod' } },
  supports: { tower: { kind: 'lattice tower' } },
  antennas: { beam: { kind: 'yagi', on: 'tower@top' } },
  bars: { entry: { kind: 'entry panel', where: 'outside' } },
  arresters: { a1: { kind: 'gas tube', on: 'entry' } },
  equipment: {
    panel: { kind: 'service panel', where: 'inside' },
    radio: { kind: 'transceiver', where: 'inside' },
    box: { kind: 'controller', where: 'inside' },
    rotator: { kind: 'rotator', where: 'outside' },
  },
  lines: {
    coax: { kind: 'coax', path: ['beam', { bond: 'tower@base' }, 'a1', { plug: 'j1' }, 'radio'] },
    outlet: { kind: 'mains', path: ['panel', 'radio'] },
    rotor: { kind: 'control', path: ['rotator', { plug: 'j2' }, 'entry', 'box'] },
    drop: { kind: 'mains', path: ['street', 'panel'] },
  },
  conductors: { lead: { from: 'radio', to: 'rod' }, tie: { from: 'entry', to: 'rod' } },
  states: {
    storm: { open: ['j1', 'j2'] },
    unplugged: { open: ['coax:radio', 'outlet:radio'] },
    'at the entry': { open: [{ at: 'coax:a1', side: 'before' }] },
    bare: { lost: ['lead'], open: ['j1', 'outlet:radio'] },
  },
};

describe('what reaches a box as typed', () => {
  test('each line comes from its far end, each conductor from what it lands on', () => {
    // Followed by hand along each path: stops on the way (bond, arrester, plug that is in) do not end a line.
    expect(reach(shack)).toEqual({
      box: ['rotor < rotator'],
      panel: ['drop < street', 'outlet < radio'],
      radio: ['coax < beam', 'lead < rod', 'outlet < panel'],
      rotator: ['rotor < box'],
    });
  });

  test('a stop in the middle of a line is reached from both its sides', () => {
    const lan: Few = {
      equipment: { modem: {}, hub: {}, computer: {} },
      lines: { lan: { kind: 'network', path: ['modem', 'hub', 'computer'] } },
    };
    expect(reach(lan)).toEqual({
      computer: ['lan < modem'],
      hub: ['lan < computer', 'lan < modem'],
      modem: ['lan < computer'],
    });
  });

  test('where nobody has looked is where a line comes from', () => {
    const unknown: Few = {
      equipment: { radio: {} },
      lines: { coax: { kind: 'coax', path: ['unknown', 'radio'] } },
      conductors: { wire: { from: 'radio', to: 'unknown' } },
    };
    expect(reach(unknown)).toEqual({ radio: ['coax < unknown', 'wire < unknown'] });
  });

  test('other ends of lines have a row of their lines alone; antennas have none', () => {
    const roof: Few = {
      electrodes: { rod: {} },
      antennas: { dish: {} },
      metalwork: { array: { kind: 'solar array' } },
      equipment: { inverter: {} },
      lines: {
        dc: { kind: 'dc supply', path: ['array', 'inverter'] },
        feed: { kind: 'coax', path: ['dish', 'inverter'] },
      },
      conductors: { bond: { from: 'array', to: 'rod' } },
    };
    expect(reach(roof)).toEqual({ array: ['dc < inverter'], inverter: ['dc < array', 'feed < dish'] });
  });

  test('glass without metal brings nothing; glass of which nobody knows may', () => {
    const fibre = (metalInside: string): Few => ({
      equipment: { router: {} },
      lines: { glass: { kind: 'fibre', path: ['street', 'router'], metalInside } },
    });
    expect(reach(fibre('no'))).toEqual({ router: [] });
    expect(reach(fibre('unknown'))).toEqual({ router: ['glass < street'] });
  });

  test('a waveguide has a shield and no core', () => {
    const { bonding } = bondingOf(
      siteOf({
        antennas: { dish: {} },
        equipment: { radio: {} },
        lines: {
          guide: { kind: 'coax', cable: 'elliptical waveguide', path: ['dish', 'radio'] },
          feed: { kind: 'coax', path: ['dish', 'radio'] },
        },
      }),
      null,
    );
    const strands = (id: string) => bonding.lines.find((l) => l.id === id)!.conductors.map((c) => c.which);
    expect(strands('guide')).toEqual(['shield']);
    expect(strands('feed')).toEqual(['shield', 'core']);
  });
});

describe('what still reaches a box in a state', () => {
  test('pulled plugs: indoors the short end brings nothing, outdoors the cable that is left is listed', () => {
    expect(reach(shack, 'storm')).toEqual({
      box: ['rotor < entry'],
      panel: ['drop < street', 'outlet < radio'],
      radio: ['lead < rod', 'outlet < panel'],
      rotator: ['rotor < j2'],
    });
  });

  test('a line taken off at the box reaches neither end by it; the ground wire stays', () => {
    const rows = reach(shack, 'unplugged');
    expect(rows.radio).toEqual(['lead < rod']);
    expect(rows.panel).toEqual(['drop < street']);
  });

  test('taken off at a stop on the way, what comes from beyond is gone and the rest remains', () => {
    expect(reach(shack, 'at the entry').radio).toEqual(['coax < a1', 'lead < rod', 'outlet < panel']);
  });

  test('with the ground wire lost too, nothing reaches the radio, and its row says so', () => {
    expect(reach(shack, 'bare').radio).toEqual([]);
  });

  test.each([
    ['the wire is broken', { condition: 'open' }],
    ['its lug at the box is open', { joints: [{ condition: 'open' }, {}] }],
    ['its clamp at the rod is open', { joints: [{}, { condition: 'open' }] }],
    ['it is parted in a splice', { joints: [{}, { condition: 'open' }, {}] }],
  ])('a ground wire brings nothing when %s', (_why, more) => {
    const few: Few = {
      electrodes: { rod: {} },
      equipment: { radio: { where: 'inside' } },
      conductors: { lead: { from: 'radio', to: 'rod', ...more } },
    };
    expect(reach(few)).toEqual({ radio: [] });
  });

  test('a clamp that a whole wire passes does not part it when it opens', () => {
    const passed: Few = {
      electrodes: { R1: {}, R2: {} },
      equipment: { radio: {} },
      conductors: { lead: { from: 'radio', passes: [{ at: 'R1', joint: { condition: 'open' } }], to: 'R2' } },
    };
    expect(reach(passed)).toEqual({ radio: ['lead < R2'] });
  });
});
