import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { type Few, siteOf } from './site-of.ts';

/** `group - group: kind part > part`, with a question mark where a tie on it may not be there. */
function bridges(few: Few, state: string | null = null): readonly string[] {
  const found = bondingOf(siteOf(few), state).bonding.bridges;
  return found.map((b) => `${b.groups.join(' - ')}: ${b.tie} ${b.parts.join(' > ')}${b.certain ? '' : '?'}`);
}

/** A tower on its rod (T), a shack bar on its rod (S), a service with its electrode (P). */
const three: Few = {
  service: 'panel',
  electrodes: { T: { kind: 'rod' }, S: { kind: 'rod' }, P: { kind: 'rod' } },
  supports: { tower: { kind: 'lattice tower' } },
  bars: { bar: { kind: 'station ground bar' } },
  equipment: { panel: { kind: 'service panel' }, radio: { kind: 'transceiver' } },
  conductors: {
    't-lead': { from: 'tower@base', to: 'T' },
    's-lead': { from: 'bar', to: 'S' },
    'p-lead': { from: 'panel', to: 'P' },
  },
};
const outlet = { kind: 'mains', path: ['panel', 'radio'], protectiveConductor: 'yes' };

describe('a chain names all that it goes through', () => {
  test('a radio on the bar with a cord: from the bar through its case and the cord to the service', () => {
    // The radio is of the bar's group by its lead; the cord lands on its case, which passes no bond on.
    const few: Few = {
      ...three,
      lines: { outlet },
      conductors: { ...three.conductors, lead: { from: 'radio', to: 'bar' } },
    };
    expect(bridges(few)).toEqual(['P - S: cord outlet > radio']);
  });

  test('a radio on nothing is a link: tower, coax, radio, cord, service', () => {
    const few: Few = { ...three, lines: { outlet, coax: { kind: 'coax', path: ['tower@top', 'radio'] } } };
    // The coax ends on a machine at the tower top, of which nobody says whether its case meets the tower.
    expect(bridges(few)).toEqual(['P - T: shield outlet > radio > coax?']);
    const bonded = { kind: 'coax', path: ['unknown', { bond: 'tower@top' }, 'radio'] };
    expect(bridges({ ...three, lines: { outlet, coax: bonded } })).toEqual(['P - T: shield outlet > radio > coax']);
  });

  test('a line with a bond at the tower and a bar on its way goes from group to group, not past them', () => {
    const coax = { kind: 'coax', path: ['unknown', { bond: 'tower@top' }, 'bar', 'radio'] };
    expect(bridges({ ...three, lines: { outlet, coax } })).toEqual([
      'P - S: shield outlet > radio > coax',
      'S - T: shield coax',
    ]);
  });

  test('two lines side by side are two bridges', () => {
    const coax = { kind: 'coax', path: ['unknown', { bond: 'tower@top' }, 'bar'] };
    expect(bridges({ ...three, lines: { one: coax, two: coax } })).toEqual(['S - T: shield one', 'S - T: shield two']);
  });

  test('a box with a wire to each of two earths', () => {
    const wires = { one: { from: 'radio', to: 'bar' }, two: { from: 'radio', to: 'T' } };
    expect(bridges({ ...three, conductors: { ...three.conductors, ...wires } })).toEqual(['S - T: case radio']);
  });

  test('a gutter that nobody knows to be one piece, on two earths', () => {
    const wires = { one: { from: 'gutter', to: 'bar' }, two: { from: 'gutter', to: 'T' } };
    const few: Few = {
      ...three,
      metalwork: { gutter: { kind: 'gutter', continuous: 'no' } },
      conductors: { ...three.conductors, ...wires },
    };
    expect(bridges(few)).toEqual(['S - T: loose-metal gutter']);
  });

  test('a guy without insulators to an anchor of its own', () => {
    const guy = { id: 'g1', anchor: 'A', metal: 'steel', turnbuckle: 'no', bypass: 'unknown', insulators: 'no' };
    const few: Few = {
      ...three,
      electrodes: { ...three.electrodes, A: {} },
      supports: { tower: { kind: 'lattice tower', guys: [guy] } },
    };
    expect(bridges(few)).toEqual(['A - T: guy tower']);
  });

  test('an arrester between two earths, and the core of a wire that one takes to another', () => {
    const gap: Few = { ...three, arresters: { gap: { kind: 'spark gap', between: ['S', 'T'] } } };
    expect(bridges(gap)).toEqual(['S - T: gap gap']);
    // No shield: joined at the antenna for static, over the gap to the arrester's body, bolted to the bar.
    const wire: Few = {
      ...three,
      antennas: { loop: { dcPath: 'yes', on: 'tower@top', touchesSupport: 'yes' } },
      arresters: { a1: { kind: 'gas tube', on: 'bar' } },
      lines: { feed: { kind: 'single wire', path: ['loop', 'a1', 'radio'] } },
    };
    expect(bridges(wire)).toEqual(['S - T: gap a1 > feed > loop']);
  });

  test('where the shield bridges, the core of the same line is not told again', () => {
    const few: Few = {
      ...three,
      antennas: { loop: { dcPath: 'yes', on: 'tower@top', touchesSupport: 'yes' } },
      arresters: { a1: { kind: 'gas tube', on: 'bar' } },
      lines: { feed: { kind: 'coax', path: ['loop', 'a1', 'radio'] } },
    };
    expect(bridges(few)).toEqual(['S - T: shield a1 > feed']);
  });
});

describe('what is no bridge', () => {
  test('soil, a bond, a bond that may be there, a cord that ends at a box on nothing', () => {
    expect(bridges(three)).toEqual([]);
    const wire = { from: 'bar', to: 'T', present: 'unknown' };
    expect(bridges({ ...three, lines: { outlet }, conductors: { ...three.conductors, wire } })).toEqual([]);
  });

  test('a line that is taken off: the air gap at its end is what it was taken off for', () => {
    const few: Few = {
      ...three,
      lines: { outlet, coax: { kind: 'coax', path: ['unknown', { bond: 'tower@top' }, { plug: 'j1' }, 'radio'] } },
      states: { plug: { open: ['j1'] }, box: { open: ['coax:radio'] }, cord: { open: ['outlet:radio'] } },
    };
    expect(bridges(few)).toEqual(['P - T: shield outlet > radio > coax']);
    for (const state of ['plug', 'box', 'cord']) expect(bridges(few, state)).toEqual([]);
  });
});

test('a cord of which nobody says whether it has a protective conductor is perhaps a bridge', () => {
  const few: Few = {
    ...three,
    lines: { outlet: { kind: 'mains', path: ['panel', 'radio'], protectiveConductor: 'unknown' } },
    conductors: { ...three.conductors, lead: { from: 'radio', to: 'bar' } },
  };
  expect(bridges(few)).toEqual(['P - S: cord outlet > radio?']);
});

test('a box that many groups meet on: each has a chain to the service, none to each other', () => {
  // By hand: the radio lies one cord from the service and one coax from each of the nine towers; nine chains, not 45 pairs.
  const ids = Array.from({ length: 9 }, (_, i) => `T${i + 1}`);
  const few: Few = {
    service: 'panel',
    electrodes: { P: {}, ...Object.fromEntries(ids.map((id) => [id, {}])) },
    equipment: three.equipment!,
    lines: {
      outlet,
      ...Object.fromEntries(
        ids.map((id) => [`coax-${id}`, { kind: 'coax', path: ['unknown', { bond: id }, 'radio'] }]),
      ),
    },
    conductors: { 'p-lead': { from: 'panel', to: 'P' } },
  };
  expect(bridges(few)).toEqual(ids.map((id) => `P - ${id}: shield outlet > radio > coax-${id}`));
});

test('the order in which a file lists its parts changes nothing', () => {
  const coax = { kind: 'coax', path: ['unknown', { bond: 'tower@top' }, 'bar', 'radio'] };
  const few: Few = { ...three, lines: { outlet, one: coax, two: coax } };
  const turned = Object.fromEntries(
    Object.entries(few).map(([key, parts]) =>
      typeof parts === 'string' ? [key, parts] : [key, Object.fromEntries(Object.entries(parts).reverse())],
    ),
  );
  expect(bridges(turned)).toEqual(bridges(few));
});
