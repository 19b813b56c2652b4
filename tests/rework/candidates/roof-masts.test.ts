import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import type { Work } from '../../../src/rework/work.ts';
import { sayWork } from '../../../src/words/say-work.ts';
import { studyOfText, tryOn } from '../plan/tried-site.ts';

interface Asked {
  readonly mast: string;
  readonly height?: string;
  readonly electrode?: string;
  readonly units?: string;
}

/** A house of 40 by 28 with its rod off the west wall, and a mast that nothing ties. */
const site = ({ mast, height = '', electrode = 'kind: rod, at: [-3, 2]', units = 'ft' }: Asked) => `
site: {name: Roof, region: us, units: ${units}, service: panel, supply: us-grounded}
buildings: {house: {corners: [[0, 0], [40, 0], [40, 28], [0, 28]]${height}}}
electrodes:
  srod: {${electrode}, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel, listed: yes}
supports:
  m: {${mast}, height: 40 ft, metal: galvanised steel, sections: one piece}
antennas:
  j: {kind: J-pole, on: m@top, dc_path: yes, touches_support: yes}
equipment:
  panel: {kind: service panel, at: [1, 2], where: house, neutral_bonded: yes}
conductors:
  c1: {from: panel, to: srod, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, acorn clamp]}
`;

const tie = (text: string): Work => candidatesOf(studyOfText(text)).find((w) => w.id.startsWith('tie-metalwork:'))!;
const steps = (work: Work) => sayWork(work.values, { terms: 'us', unitsFirst: 'us' }).steps.join(' ');

function laid(text: string) {
  const change = tie(text).changes.find((c) => c.is === 'add' && c.section === 'conductors');
  return change?.is === 'add' ? change.fields : {};
}

describe('a mast on a roof', () => {
  // 5 ft to a foot off the wall, 2.83 ft from [-1, 4] to [-3, 2], 1.97 ft for the ends: 9.8 ft on the ground
  const onRoof = site({ mast: 'kind: roof mast, at: [4, 4, 30]' });

  it('has a lead that comes down from the typed height of its foot, and is not trenched', () => {
    expect(laid(onRoof)).toMatchObject({ from: 'm@base', to: 'srod', length: '40 ft', where: 'outside', buried: 'no' });
    expect(tie(onRoof).runs[0]!.depthM).toBeNull();
    expect(steps(tie(onRoof))).toContain('From the foot of the wall to a ground rod it may lie in the soil.');
    expect(tryOn(onRoof, tie(onRoof).changes)).not.toHaveProperty('problem');
  });

  it('comes down outside the wall on the drawing too', () => {
    expect(laid(onRoof).route).toEqual([
      [4, 4, 30],
      [-1, 4, 30],
      [-1, 4, 0],
      [-3, 2, 0],
    ]);
  });

  it('turns at no corner twice', () => {
    // up to the wall of the north-west corner, of which two corners of the way are one once rounded
    const route = laid(site({ mast: 'kind: roof mast, at: [1, 27, 30]' })).route as readonly (readonly number[])[];
    const twice = route.filter((p, i) => i > 0 && p.join() === route[i - 1]!.join());
    expect(twice).toEqual([]);
  });

  it('takes the height of its building where nobody typed that of its foot', () => {
    const fields = laid(site({ mast: 'kind: roof mast, at: [4, 4]', height: ', height: 25 ft' }));
    expect(fields.length).toBe('35 ft');
    expect(fields.route).toEqual([
      [4, 4],
      [-1, 4],
      [-3, 2],
    ]);
  });

  it('has a lead of unknown length where neither is known, never the short one', () => {
    const fields = laid(site({ mast: 'kind: roof mast, at: [4, 4]' }));
    expect(fields).toMatchObject({ length: 'unknown', buried: 'no' });
    expect(laid(site({ mast: 'kind: roof mast, at: [4, 4]', height: ', height: over 20 ft' })).length).toBe('unknown');
  });

  it('is led down like one on the face of a wall, and like any mast that stands high up', () => {
    // [-0.5, 20] to [-3, 2]: 18.2 ft along the wall and 2 ft for the ends
    const onWall = laid(site({ mast: 'kind: mast, at: [-0.5, 20, 15]' }));
    expect(onWall).toMatchObject({ length: '36 ft', buried: 'no' });
    expect(laid(site({ mast: 'kind: building face, at: [-0.5, 20, 15]' }))).toMatchObject({ length: '36 ft' });
  });
});

describe('a mast on the ground', () => {
  it('has its bond in the soil, as long as the way is', () => {
    const fields = laid(site({ mast: 'kind: mast, at: [-0.5, 20]' }));
    expect(fields).toMatchObject({ length: '21 ft', buried: '18 in' });
    expect(steps(tie(site({ mast: 'kind: mast, at: [-0.5, 20]' })))).not.toContain('wall');
  });

  it('on a plinth too', () => {
    expect(laid(site({ mast: 'kind: mast, at: [-0.5, 20, 2]' }))).toMatchObject({ buried: '18 in' });
  });
});

describe('the joint of a lead', () => {
  const mast = 'kind: roof mast, at: [4, 4, 30]';
  const joints = (kind: string) =>
    laid(
      site({ mast, electrode: `kind: ${kind}, at: [-3, 2]` }).replace(
        /, length: 8 ft, diameter: 5\/8 in, metal: copper-clad steel, listed: yes/,
        '',
      ),
    ).joints;

  it('to a steel frame is a weld, to a footing what is listed for its bars: a clamp for rods fits neither', () => {
    expect(joints('structural steel')).toMatchObject([{ kind: 'bolted lug' }, 'exothermic weld']);
    expect(joints('concrete-encased')).toMatchObject([{ kind: 'bolted lug' }, { kind: 'U-bolt', listed: 'yes' }]);
  });

  it('to a rod stays a weld, and to a pipe a clamp for pipes', () => {
    expect(joints('rod')).toMatchObject([{ kind: 'bolted lug' }, 'exothermic weld']);
    expect(joints('pipe')).toMatchObject([{ kind: 'bolted lug' }, { kind: 'pipe clamp' }]);
  });
});

describe('a roof mast where nothing in the soil is known', () => {
  const bare = (height: string) => `
site: {name: Bare, region: uk, units: m, service: unknown}
buildings: {hut: {corners: [[0, 0], [10, 0], [10, 8], [0, 8]]${height}}}
electrodes: none
supports: {m: {kind: roof mast, at: [5, 1], metal: galvanised steel, sections: one piece}}
antennas: {j: {kind: J-pole, on: m@top, dc_path: yes, touches_support: yes}}
equipment: none
lines: none
conductors: none
`;
  const rodOf = (text: string) => candidatesOf(studyOfText(text)).find((w) => w.id === 'add-rods:m')!;
  const added = (text: string) => rodOf(text).changes.flatMap((c) => (c.is === 'add' ? [c.fields] : []));

  it('is led down to a rod off the nearest wall', () => {
    // 1 m to the wall and 0.8 m off it, 5 m down, 0.6 m for the ends: 7.4 m
    expect(added(bare(', height: 5 m'))).toMatchObject([
      { kind: 'rod', at: [5, -0.8] },
      { to: 'm@base', length: '7.5 m', buried: 'no' },
    ]);
  });

  it('has no length where nobody knows how high the roof is', () => {
    expect(added(bare(''))[1]).toMatchObject({ to: 'm@base', length: 'unknown' });
  });
});
