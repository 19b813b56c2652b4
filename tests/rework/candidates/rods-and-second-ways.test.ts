import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import type { Work } from '../../../src/rework/work.ts';
import { studyOfText, tryOn } from '../plan/tried-site.ts';

const work = (text: string, id: string): Work | undefined => candidatesOf(studyOfText(text)).find((w) => w.id === id);
const isReading = (c: Work['changes'][number]) => c.is === 'set' && c.field === 'resistance';

describe('what was measured on an old rod', () => {
  const site = (rod: string) => `
site: {name: Rod, region: us, units: ft, service: panel, supply: us-grounded}
buildings: {house: {}}
electrodes:
  r: {kind: rod, ${rod}, diameter: 5/8 in, metal: copper-clad steel}
equipment: {panel: {kind: service panel, where: house, neutral_bonded: yes}}
conductors:
  c1: {from: panel, to: r, wire: 6 AWG copper, length: 5 ft}
`;
  const forgets = { is: 'set', section: 'electrodes', id: 'r', field: 'resistance', value: 'unknown' };

  it('does not hold for one that is driven deeper', () => {
    const text = site('length: 4 ft, resistance: 22 ohm, measured: alone');
    expect(work(text, 'deepen-rod:r')!.changes).toContainEqual(forgets);
    const tried = tryOn(text, work(text, 'deepen-rod:r')!.changes);
    expect('problem' in tried ? '' : tried.text).toContain('length: 8 ft, resistance: unknown');
  });

  it('does not hold for one that is loose and driven anew, nor for one that goes outside', () => {
    expect(work(site('length: 8 ft, condition: loose, resistance: over range'), 'put-right:r')!.changes).toContainEqual(
      forgets,
    );
    const indoors = site('length: 8 ft, where: house, resistance: 30 ohm').replace(
      'conductors:',
      `supports: {m: {kind: mast, height: 30 ft, metal: galvanised steel}}
antennas: {v: {kind: vertical, on: m@top, dc_path: yes}}
conductors:
  c2: {from: m@base, to: r, wire: 6 AWG copper, length: 9 ft}`,
    );
    expect(work(indoors, 'put-right:r')!.changes).toContainEqual(forgets);
  });

  it('is no change where nobody measured', () => {
    for (const rod of ['length: 4 ft', 'length: 4 ft, resistance: unknown'])
      expect(work(site(rod), 'deepen-rod:r')!.changes.filter(isReading)).toEqual([]);
  });
});

describe('a second wire between the same two points', () => {
  // the places are 3 ft apart, 1.97 ft for the ends: 5 ft by the plan
  const site = (typed: string) => `
site: {name: Twice, region: us, units: ft, service: panel, supply: us-grounded}
buildings: {house: {corners: [[0, 0], [40, 0], [40, 30], [0, 30]]}}
electrodes:
  s: {kind: rod, at: [42, 2], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel, listed: yes}
bars: {entry: {kind: entry panel, at: [40, 12], where: outside}}
arresters: {a1: {kind: gas tube, on: entry, sparkover: 230 V, listed: yes, joint: bolted lug}}
equipment: {panel: {kind: service panel, at: [39, 2], where: house, neutral_bonded: yes}}
conductors:
  c1: {from: panel, to: s, wire: 6 AWG copper, ${typed}, joints: [bolted lug, exothermic weld]}
  c2: {from: entry, to: s, wire: 6 AWG copper, length: 12 ft, joints: [bolted lug, exothermic weld]}
  c3: {from: entry, to: s, wire: 6 AWG copper, length: 12 ft, joints: [bolted lug, exothermic weld]}
`;
  const lengthOf = (text: string) =>
    candidatesOf(studyOfText(text))
      .filter((w) => w.kind === 'second-path')
      .flatMap((w) => w.changes)
      .flatMap((c) => (c.is === 'add' ? [[c.fields.from, c.fields.to, c.fields.length]] : []));

  it('is not shorter than the one that somebody measured there', () => {
    expect(lengthOf(site('length: 7 ft'))).toEqual([['s', 'panel', '7 ft']]);
    expect(lengthOf(site('length: 80 in'))).toEqual([['s', 'panel', '7 ft']]);
  });

  it('is as long as the plan says where that is longer, or where nobody knows', () => {
    expect(lengthOf(site('length: 3.1 ft'))).toEqual([['s', 'panel', '5 ft']]);
    expect(lengthOf(site('length: unknown'))).toEqual([['s', 'panel', '5 ft']]);
  });
});

describe('a rod that is too short for an antenna', () => {
  const site = (region: string, length: string) => `
site: {name: Antenna, region: ${region}, units: m, service: cu, supply: tt}
buildings: {house: {corners: [[0, 0], [11, 0], [11, 8], [0, 8]], height: 5 m}}
electrodes:
  ttrod: {kind: rod, at: [0.3, -0.9], length: 1.2 m, diameter: 16 mm, metal: copper-clad steel}
  arod: {kind: rod, at: [24, 2], length: ${length}, diameter: 16 mm, metal: copper-clad steel}
supports: {mast: {kind: mast, at: [25, 3], height: 12 m, metal: galvanised steel, sections: one piece}}
antennas: {hex: {kind: yagi, on: mast@top, dc_path: yes, touches_support: yes}}
equipment: {cu: {kind: service panel, at: [1, 1], where: house}}
lines: none
conductors:
  t: {from: cu, to: ttrod, wire: 16 mm2 copper, length: 2 m}
  s: {from: mast@base, to: arod, wire: 16 mm2 copper, length: 2 m}
  b: {from: arod, to: ttrod, wire: 16 mm2 copper, length: 26 m, buried: 0.5 m}
`;

  it('gets one that is long enough, beside the rod that its mast is led to', () => {
    const text = site('iec', '1.2 m');
    const rod = work(text, 'add-rods:arod')!;
    expect(rod.answers).toEqual(['iec-antenna-electrode-minimum:arod+ttrod']);
    expect(rod.changes[0]).toMatchObject({
      is: 'add',
      section: 'electrodes',
      fields: { kind: 'rod', length: '2.5 m' },
    });
    const tried = tryOn(text, rod.changes);
    const left =
      'problem' in tried
        ? []
        : tried.study.findings.filter((f) => f.outcome === 'not met' && f.rule === 'iec-antenna-electrode-minimum');
    expect('problem' in tried).toBe(false);
    expect(left).toEqual([]);
  });

  it('gets none where it is long enough', () => {
    expect(work(site('iec', '2.5 m'), 'add-rods:arod')).toBeUndefined();
  });

  it('gets none of 8 ft, which is too short', () => {
    const text = site('us', '1.2 m').replace('region: us', 'region: us, codes: [us, iec]');
    const study = studyOfText(text);
    const wrong = study.findings.filter((f) => f.rule === 'iec-antenna-electrode-minimum' && f.outcome === 'not met');
    expect(wrong).toHaveLength(1);
    expect(candidatesOf(study).filter((w) => w.answers.includes(wrong[0]!.id))).toEqual([]);
  });
});

/** Canadian Electrical Code (from memory): two rods of 3 m, at least 3 m apart. */
describe('the first rods of a service', () => {
  const site = (region: string) => `
site: {name: Bare, region: ${region}, units: ft, service: panel, supply: us-grounded}
electrodes: none
equipment: {panel: {kind: service panel, neutral_bonded: yes}}
conductors: none
`;
  const rodsOf = (region: string) => {
    const found = work(site(region), 'add-rods:panel')!;
    const lengths = found.changes.flatMap((c) => (c.is === 'add' && c.section === 'electrodes' ? c.fields.length : []));
    return { lengths, bought: found.materials.filter((m) => / rod$/.test(m.name)).map((m) => m.name) };
  };

  it('are of the length that the country asks, on the list of material too', () => {
    expect(rodsOf('us')).toEqual({ lengths: ['8 ft', '8 ft'], bought: ['8 ft rod'] });
    expect(rodsOf('ca')).toEqual({ lengths: ['10 ft', '10 ft'], bought: ['10 ft rod'] });
  });

  it('stand as far apart in Canada as it asks', () => {
    const [, second] = work(site('ca'), 'add-rods:panel')!.changes.filter(
      (c) => c.is === 'add' && c.section === 'electrodes',
    );
    expect(second).toMatchObject({ fields: { near: [{ distance: '20 ft' }] } });
  });
});
