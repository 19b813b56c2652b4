import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { type Few, siteOf } from './site-of.ts';

const bonding = (few: Few, state: string | null = null) => bondingOf(siteOf(few), state).bonding;

const mast: Few = {
  electrodes: { rod: { kind: 'rod' } },
  supports: { mast: { kind: 'mast', heightM: { low: 7.62, high: 7.62 } } },
  antennas: { vertical: { kind: 'ground plane', on: 'mast@top' } },
  equipment: { radio: { kind: 'transceiver', where: 'inside' } },
  lines: { coax: { kind: 'coax', path: ['vertical', 'radio'], lengthM: { low: 18.3, high: 18.3 } } },
  conductors: { lead: { from: 'mast@base', to: 'rod', wire: '10 AWG copper', length: 1.2192 } },
};

describe('the smallest useful file', () => {
  test('mast and rod are one group, the radio hangs on nothing but its coax', () => {
    const b = bonding(mast);
    expect(b.groups.map((g) => g.parts)).toEqual([['mast', 'rod'], ['radio'], ['vertical']]);
    expect(b.groups.map((g) => g.hasService)).toEqual([null, null, null]);
    expect(b.unbondedElectrodes).toBeNull();
  });

  test('the way of the mast to its rod is the lead', () => {
    const way = bonding(mast).ways.find((w) => w.part === 'mast')!.toElectrode!;
    expect(way.to).toBe('rod');
    expect(way.lengthM).toEqual({ low: 1.2192, high: 1.2192 });
    expect(way.through).toEqual(['lead:mast', 'lead', 'lead:rod']);
  });

  test('whether the antenna touches its mast decides whether it is earthed', () => {
    const vertical = bonding(mast).ways.find((w) => w.part === 'vertical')!;
    expect(vertical.toElectrode).toBeNull();
    expect(vertical.perhaps.toElectrode).toEqual(['antennas.vertical.touches_support']);
  });
});
