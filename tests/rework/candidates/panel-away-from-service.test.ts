import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { sceneOf } from '../../../src/rework/candidates/scene.ts';
import { sayWork } from '../../../src/words/say-work.ts';
import { studyOfText, tryOn } from '../plan/tried-site.ts';

interface Asked {
  readonly rod?: string;
  readonly mast?: string;
  readonly buildings?: string;
  readonly more?: string;
  readonly bar?: string;
  readonly tie?: string;
}

const placed = `
  house: {corners: [[0, 0], [40, 0], [40, 30], [0, 30]]}
  shop: {corners: [[90, 0], [114, 0], [114, 20], [90, 20]]}`;
const tied = '  c2: {from: srod, to: mrod, wire: 6 AWG copper, length: 80 ft, buried: 18 in}';

/** The service in the house, 50 ft west of a workshop whose line comes from a mast at its east wall. */
const site = ({
  rod = 'at: [117, 10], ',
  mast = 'at: [116, 10], ',
  buildings = placed,
  more = '',
  bar = '',
  tie = tied,
}: Asked) => `
site: {name: Workshop, region: us, units: ft, service: panel, supply: us-grounded, without: [telephone, cable tv]}
buildings: ${buildings}
electrodes:
  srod: {kind: rod, at: [42.5, 2], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel, listed: yes}
  mrod: {kind: rod, ${rod}length: 8 ft, diameter: 5/8 in, metal: copper-clad steel, listed: yes}
supports:
  mast: {kind: mast, ${mast}height: 35 ft, metal: galvanised steel, sections: one piece}
antennas:
  jp: {kind: J-pole, on: mast@top, dc_path: yes, touches_support: yes}
${bar}
equipment:
  panel: {kind: service panel, at: [39, 2], where: house, neutral_bonded: yes}
  radio: {kind: transceiver, at: [112, 10], where: shop, power: 100 W, swr: 1.5}
${more}
lines:
  l1: {kind: coax, path: [jp, radio], length: 50 ft}
  out: {kind: mains, path: [panel, radio], length: 90 ft, protective_conductor: no}
conductors:
  c1: {from: panel, to: srod, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, exothermic weld]}
  c3: {from: mast@base, to: mrod, wire: 6 AWG copper, length: 3 ft, joints: [bolted lug, exothermic weld]}
${tie}
`;

const work = (text: string, id: string) => candidatesOf(studyOfText(text)).find((w) => w.id === id)!;

function added(text: string, id: string) {
  return work(text, id).changes.flatMap((c) => (c.is === 'add' ? [c.fields] : []));
}

describe('a new panel of a building without the service', () => {
  const id = 'move-panel:entry-panel-shop';

  it('goes on the wall where its line arrives, and is bonded to the electrode of its mast', () => {
    // the wall at 114 ft and a hand's breadth; to the rod at 117 ft 2.02 ft, 1.97 ft for the ends
    expect(added(site({}), id)).toMatchObject([
      { kind: 'entry panel', at: [115, 10] },
      { to: 'mrod', length: '4 ft' },
    ]);
    const done = tryOn(site({}), work(site({}), id).changes);
    const grave =
      'problem' in done
        ? ['problem']
        : done.study.findings
            .filter((f) => f.rule === 'bond-run-short' && f.outcome === 'not met')
            .map((f) => f.severity);
    expect(grave).toEqual(['advice']);
  });

  it('is told of its own wall in both regions', () => {
    for (const terms of ['us', 'iec'] as const) {
      const { why, steps } = sayWork(work(site({}), id).values, { terms, unitsFirst: 'us' });
      expect(steps.join(' ')).toContain('on the wall outside of shop, where the lines arrive');
      expect(`${why} ${steps.join(' ')}`).not.toMatch(/[[\]{}]|undefined/);
    }
  });

  it('has its wire led round the building', () => {
    // 10.41 ft up the east wall to the corner, 0.82 ft round it, 12.57 ft to the rod north of the workshop, 1.97 ft for the ends;
    // straight through the workshop it would be 18.4 ft
    const bond = added(site({ rod: 'at: [102, 23], ' }), id)[1]!;
    expect(bond).toMatchObject({ to: 'mrod', length: '26 ft', where: 'outside', buried: 'no' });
    expect((bond.route as readonly unknown[]).length).toBeGreaterThan(2);
  });

  it('waits for the bond of an electrode that is not of the system yet', () => {
    const { needs } = work(site({ tie: '' }), id);
    expect(needs).toEqual(['bond:mrod']);
    expect(added(site({ tie: '' }), id)[1]).toMatchObject({ to: 'mrod' });
  });

  it('is bonded to the electrode of the mast where nothing has a place', () => {
    const text = site({ rod: '', mast: '', buildings: '{house: {}, shop: {}}' });
    expect(added(text, id)).toMatchObject([{ kind: 'entry panel' }, { to: 'mrod', length: 'unknown' }]);
  });

  it('where nobody knows the mast goes to the wall by the nearest electrode', () => {
    const text = site({ mast: '', rod: 'at: [100, -3], ' });
    expect(added(text, id)[0]).toMatchObject({ at: [100, -1] });
  });

  it('of the building with the service stays beside the service', () => {
    const text = site({ more: '  tv: {kind: receiver, at: [20, 10], where: house}' }).replace(
      'lines:\n',
      'lines:\n  l2: {kind: coax, path: [jp, tv], length: 150 ft}\n',
    );
    expect(added(text, 'move-panel:entry-panel-house')).toMatchObject([{ at: [41, 2] }, { to: 'srod' }]);
  });
});

describe('a box in a building without the service', () => {
  const tieOf = (text: string, box = 'radio') => {
    const ties = candidatesOf(studyOfText(text)).filter((w) => w.kind === 'tie-metalwork');
    return ties.find((w) =>
      w.changes.some((c) => c.is === 'add' && c.section === 'conductors' && c.fields.from === box),
    );
  };
  const to = (text: string, box?: string) => {
    const laid = tieOf(text, box)?.changes.flatMap((c) => (c.is === 'add' ? [c.fields] : []))[0];
    return laid === undefined ? undefined : [laid.to, laid.length];
  };

  it('is tied to the panel that its building gets, never across the garden', () => {
    // 3 ft to the wall and the hand's breadth, 1.97 ft for the ends
    expect(to(site({}))).toEqual(['entry-panel-shop', '5 ft']);
    expect(tieOf(site({}))!.needs).toEqual(['move-panel:entry-panel-shop']);
  });

  it('is tied to a bar of its own building, not to one of the other', () => {
    const bar = `bars:
  shop-bar: {kind: station ground bar, at: [112, 14], where: shop}
  house-bar: {kind: station ground bar, at: [38, 4], where: house}`;
    const tie = `${tied}
  c4: {from: shop-bar, to: mrod, wire: 6 AWG copper, length: 9 ft}
  c5: {from: house-bar, to: srod, wire: 6 AWG copper, length: 7 ft}`;
    expect(to(site({ bar, tie }))).toEqual(['shop-bar', '6 ft']);
    const here = tie.replace(/\n {2}c4.*/, '');
    expect(to(site({ bar: bar.replace(/\n {2}shop-bar.*/, ''), tie: here }))).toEqual(['entry-panel-shop', '5 ft']);
  });

  it('is tied to the sub-panel of its building', () => {
    const text = `${site({ more: '  sub: {kind: sub-panel, at: [112, 16], where: shop, neutral_bonded: no}' }).replace(
      'lines:\n',
      'lines:\n  feed: {kind: mains, path: [panel, sub], length: 80 ft, protective_conductor: yes}\n',
    )}  c6: {from: sub, to: mrod, wire: 6 AWG copper, length: 9 ft}\n`;
    expect(to(text)?.[0]).toBe('sub');
  });

  it('in the house of the service is tied as before', () => {
    const text = site({ more: '  tuner: {kind: tuner, at: [35, 2], where: house}' }).replace(
      'lines:\n',
      'lines:\n  in: {kind: mains, path: [panel, tuner], length: 6 ft, protective_conductor: no}\n',
    );
    expect(to(text, 'tuner')).toEqual(['panel', '6 ft']);
  });

  it('on a site of one building is tied as before', () => {
    const text = site({ buildings: '\n  shop: {corners: [[90, 0], [114, 0], [114, 20], [90, 20]]}' }).replace(
      'where: house',
      'where: shop',
    );
    expect(to(text)?.[0]).toBe('panel');
  });
});

it('a way from a place where nothing is yet is that of a part there', () => {
  const scene = sceneOf(studyOfText(site({ rod: 'at: [102, 23], ' })));
  const ft = 0.3048;
  expect(scene.routeFrom([116 * ft, 10 * ft], 'mrod')!.lengthM).toBeCloseTo(scene.route('mast', 'mrod')!.lengthM, 9);
  expect(scene.routeFrom([0, 0], 'nowhere')).toBeNull();
});
