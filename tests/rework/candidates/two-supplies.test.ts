import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { studyOfText } from '../plan/tried-site.ts';

interface Asked {
  readonly supply?: string;
  readonly lines?: string;
  readonly radio?: string;
  readonly wires?: string;
}

/** A shack on a TT panel of its own, with a mast, a bar and a fence of which no wire says on which supply they are. */
const site = ({ supply = ', supply: tt', lines = '', radio = '', wires = '' }: Asked) => `
site: {name: Garden, region: uk, units: m, service: cu, supply: tn-c-s}
buildings: {house: {}, shack: {}}
electrodes:
  tt-rod: {kind: rod, length: 2.4 m, diameter: 15 mm, metal: copper-clad steel}
  mast-rod: {kind: rod, length: 2.5 m, diameter: 16 mm, metal: copper-clad steel}
supports: {mast: {kind: mast, metal: galvanised steel}}
antennas: {beam: {kind: yagi, on: mast@top, touches_support: yes}}
bars: {bar: {kind: station ground bar, where: shack}}
arresters: none
equipment:
  cu: {kind: service panel, where: house, neutral_bonded: yes}
  db: {kind: sub-panel, where: shack${supply}, neutral_bonded: no}
  radio: {kind: transceiver, where: shack${radio}}
  rx: {kind: receiver, where: house}
lines:
  feeder: {kind: mains, path: [cu, db], length: 30 m, protective_conductor: no}
  outlet: {kind: mains, path: [db, radio], protective_conductor: yes}
  coax: {kind: coax, path: [beam, {bond: mast@0.3 m}, radio]}
${lines}
conductors:
  tt: {from: db, to: tt-rod, wire: 6 mm2 copper insulated, length: 3 m}
  lead: {from: mast@base, to: mast-rod, wire: 16 mm2 copper, length: 2 m}
${wires}
metalwork: none
`;

/** Ends of every wire that a work would add, and what it sets. */
function proposed(text: string): readonly string[] {
  return candidatesOf(studyOfText(text)).flatMap((w) =>
    w.changes.flatMap((c) => {
      if (c.is === 'add' && c.section === 'conductors') return [`${c.fields.from} to ${c.fields.to}`];
      return c.is === 'set' && c.section === 'lines' ? [`${c.id} ${c.field}`] : [];
    }),
  );
}

/** Of what stands in the shack or beside it. */
const toHouse = (text: string) =>
  proposed(text).filter((p) => / to cu$/.test(p) && !/^(?:entry-panel-house|rx) /.test(p));

describe('works beside a TT part', () => {
  it('tie neither it nor what may belong to it to the other supply', () => {
    expect(toHouse(site({}))).toEqual([]);
    expect(proposed(site({}))).not.toContain('feeder protective_conductor');
    expect(toHouse(site({ wires: '  w: {from: bar, to: mast-rod}\n  v: {from: bar, to: db}' }))).toEqual([]);
  });

  it('tie it where the panel stands on the supply of the house', () => {
    const house = proposed(site({ supply: '' }));
    expect(house).toContain('tt-rod to cu');
    expect(toHouse(site({ supply: '' })).length).toBeGreaterThan(1);
  });

  it('go on within it: a panel for the lines of the shack lands on what stands there', () => {
    expect(proposed(site({}))).toContain('entry-panel-shack to mast-rod');
  });

  it('bond no shield at both ends of a line between the two', () => {
    const lines = '  link: {kind: coax, path: [rx, radio], length: 35 m, buried: yes}';
    expect(proposed(site({ lines }))).not.toContain('link path');
    expect(proposed(site({ lines, supply: '' }))).toContain('link path');
  });

  it('bond the two only where one person reaches both: the TT part has failed there', () => {
    expect(toHouse(site({ radio: ', within_reach: [cu]', wires: '  v: {from: radio, to: db}' }))).not.toEqual([]);
  });
});
