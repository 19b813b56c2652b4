import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import type { Work } from '../../../src/rework/work.ts';
import { studyOfText } from '../plan/tried-site.ts';

/** What a rule finds wrong, each with the works that are proposed for it. */
function answered(text: string, rule: string): Readonly<Record<string, readonly Work[]>> {
  const study = studyOfText(text);
  const works = candidatesOf(study);
  const wrong = study.findings.filter((f) => f.rule === rule && f.outcome === 'not met' && f.agreed === null);
  return Object.fromEntries(
    wrong.map((f) => [`${f.id} ${f.because.key}`, works.filter((w) => w.answers.includes(f.id))]),
  );
}

const ids = (found: Readonly<Record<string, readonly Work[]>>) =>
  Object.fromEntries(Object.entries(found).map(([finding, works]) => [finding, works.map((w) => w.id)]));

/** The way a mended site must say it: which screw comes out. */
describe('a neutral', () => {
  const house = (main: string, meter: string, more = '') => `
site: {name: House, region: us, units: ft, service: main, supply: us-grounded}
buildings: {house: {}}
electrodes: {R1: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}}
equipment:
  meter: {kind: meter box, where: outside, neutral_bonded: ${meter}}
  main: {kind: service panel, where: house, neutral_bonded: ${main}}
${more}
lines:
  supply: {kind: mains, path: [street, meter, main]}
conductors:
  c1: {from: main, to: R1, wire: 6 AWG copper, length: 5 ft}
`;
  const rule = 'neutral-bonded-once';

  it('that is bonded nowhere is for a person to look into: taking a bond out would make it worse', () => {
    expect(ids(answered(house('no', 'no'), rule))).toEqual({ 'neutral-bonded-once:main nowhere': [] });
  });

  it('that is bonded twice loses the bond of the second box, and no other', () => {
    const twice = house('yes', 'no', '  garage: {kind: sub-panel, where: house, neutral_bonded: yes}');
    const found = answered(twice, rule);
    expect(ids(found)).toEqual({ 'neutral-bonded-once:garage bonded again': ['put-right:garage'] });
    expect(Object.values(found)[0]![0]!.changes).toEqual([
      { is: 'set', section: 'equipment', id: 'garage', field: 'neutral_bonded', value: 'no' },
    ]);
  });
});

describe('a panel in a hut', () => {
  const hut = (own: string, feeder: string) => `
site: {name: Hut, region: us, units: ft, service: main, supply: us-grounded}
buildings: {house: {}, hut: {}}
electrodes:
  R1: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  R2: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
equipment:
  main: {kind: service panel, where: house, neutral_bonded: yes}
  sub: {kind: sub-panel, where: hut, neutral_bonded: no}
lines:
  feeder: {kind: mains, path: [main, sub], length: 60 ft, buried: yes, protective_conductor: ${feeder}}
conductors:
  c1: {from: main, to: R1, wire: 6 AWG copper, length: 5 ft}
  tie: {from: R1, to: R2, wire: 6 AWG copper, length: 70 ft, buried: 18 in}
${own}
`;
  const own = '  c2: {from: sub, to: R2, wire: 6 AWG copper, length: 5 ft}';
  const rule = 'separate-building-electrode';

  it('with an electrode of its own gets no rod for a feeder that lacks its protective conductor: no rod makes that good', () => {
    expect(ids(answered(hut(own, 'no'), rule))).toEqual({
      'separate-building-electrode:sub no conductor with the feeder': [],
    });
  });

  it('without an electrode gets rods', () => {
    const found = answered(hut('', 'yes'), rule);
    expect(ids(found)).toEqual({ 'separate-building-electrode:sub no electrode': ['add-rods:sub'] });
    const added = Object.values(found)[0]![0]!.changes.filter((c) => c.is === 'add' && c.section === 'electrodes');
    expect(added.length).toBeGreaterThan(0);
  });
});
