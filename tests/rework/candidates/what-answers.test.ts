import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import type { Work } from '../../../src/rework/work.ts';
import { sayWork } from '../../../src/words/say-work.ts';
import { studyOfText, tryOn } from '../plan/tried-site.ts';
import { siteAtHand } from './sites-at-hand.ts';

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

  it('with an electrode of its own gets a protective conductor for a feeder that lacks one: no rod makes that good', () => {
    expect(ids(answered(hut(own, 'no'), rule))).toEqual({
      'separate-building-electrode:sub no conductor with the feeder': ['put-right:feeder'],
    });
  });

  it('that lacks both gets both, the conductor first', () => {
    const found = answered(hut('', 'no'), rule);
    expect(ids(found)).toEqual({ 'separate-building-electrode:sub no electrode': ['add-rods:sub'] });
    expect(Object.values(found)[0]![0]!.needs).toEqual(['put-right:feeder']);
  });

  it('without an electrode gets rods once somebody has looked whether its feeder has the conductor', () => {
    const works = candidatesOf(siteAtHand('tests/cases/case-21.site.yaml').study);
    expect(works.find((w) => w.id === 'add-rods:shop-panel')!.needs).toEqual(['put-right:feeder']);
    expect(works.map((w) => w.id)).toContain('put-right:feeder');
    expect(works.map((w) => w.id)).not.toContain('tie-metalwork:shop-panel');
  });

  it('without an electrode gets rods', () => {
    const found = answered(hut('', 'yes'), rule);
    expect(ids(found)).toEqual({ 'separate-building-electrode:sub no electrode': ['add-rods:sub'] });
    const added = Object.values(found)[0]![0]!.changes.filter((c) => c.is === 'add' && c.section === 'electrodes');
    expect(added.length).toBeGreaterThan(0);
  });
});

describe('a sub-panel whose feeder lacks its protective conductor', () => {
  const house = (region: string, feeder: string, neutral: string) => `
site: {name: House, region: ${region}, units: ft, service: main, supply: ${region === 'us' ? 'us-grounded' : 'tn-s'}}
buildings: {house: {}}
electrodes: {R1: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}}
equipment:
  main: {kind: service panel, where: house, neutral_bonded: ${region === 'us' ? 'yes' : 'no'}}
  sub: {kind: sub-panel, where: house, neutral_bonded: ${neutral}}
lines:
  drop: {kind: mains, path: [street, main]}
  feeder: {kind: mains, path: [main, sub], length: 70 ft, buried: yes${feeder}}
conductors:
  c1: {from: main, to: R1, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, exothermic weld]}
`;
  const worksOf = (text: string) => candidatesOf(studyOfText(text));
  const work = (text: string, id: string) => worksOf(text).find((w) => w.id === id)!;
  const told = (w: Work, terms: 'us' | 'iec') => sayWork(w.values, { terms, unitsFirst: 'us' });
  const no = ', protective_conductor: no';

  it('keeps the second bond of its neutral until the conductor is there', () => {
    const text = house('us', no, 'yes');
    expect(work(text, 'put-right:sub').needs).toEqual(['put-right:feeder']);
    const first = work(text, 'put-right:feeder');
    expect(first.changes).toEqual([
      { is: 'set', section: 'lines', id: 'feeder', field: 'protective_conductor', value: 'yes' },
    ]);
    // 70 ft = 21.336 m
    expect(first.materials).toEqual([
      {
        name: 'equipment grounding conductor',
        unit: 'm',
        count: { low: expect.closeTo(21.336, 9), high: expect.closeTo(21.336, 9) },
      },
    ]);
    const done = tryOn(text, [...first.changes, ...work(text, 'put-right:sub').changes]);
    const left = 'problem' in done ? [] : done.study.findings.filter((f) => f.outcome === 'not met');
    expect(left.map((f) => f.id)).toEqual(['single-rod-25-ohm:R1']);
  });

  it('is led back by no loose wire', () => {
    for (const text of [house('us', no, 'yes'), house('us', no, 'no'), house('iec', no, 'no')])
      expect(worksOf(text).filter((w) => w.kind === 'tie-metalwork')).toEqual([]);
  });

  it('elsewhere has the conductor for a fault that could go back through the soil alone', () => {
    const text = house('iec', no, 'no');
    const found = answered(text, 'earth-is-not-a-fault-path');
    expect(ids(found)).toEqual({ 'earth-is-not-a-fault-path:sub panel cut off': ['put-right:feeder'] });
    expect(told(work(text, 'put-right:feeder'), 'iec').title).toBe('A protective conductor with the feeder feeder');
    expect(told(work(text, 'put-right:feeder'), 'us').title).toBe(
      'An equipment grounding conductor with the feeder feeder',
    );
    expect(work(text, 'put-right:feeder').materials[0]!.name).toBe('protective conductor');
  });

  it('is looked at first where nobody said', () => {
    for (const unsaid of ['', ', protective_conductor: unknown']) {
      const text = house('us', unsaid, 'yes');
      expect(work(text, 'put-right:sub').needs).toEqual(['put-right:feeder']);
      expect(told(work(text, 'put-right:feeder'), 'us').steps.join(' ')).toContain('look first');
    }
    expect(told(work(house('us', no, 'yes'), 'put-right:feeder'), 'us').steps.join(' ')).not.toContain('look first');
  });

  it('loses its second bond at once where the conductor is there, and a sheet says first to make sure', () => {
    const text = house('us', ', protective_conductor: yes', 'yes');
    expect(work(text, 'put-right:sub').needs).toEqual([]);
    expect(worksOf(text).map((w) => w.id)).not.toContain('put-right:feeder');
    expect(told(work(text, 'put-right:sub'), 'us').steps[0]).toContain('Make sure first');
  });

  it('asks nothing of what comes from the street', () => {
    const text = house('us', ', protective_conductor: yes', 'no')
      .replace('  sub:', '  second: {kind: service panel, where: house, neutral_bonded: yes}\n  sub:')
      .replace('lines:\n', 'lines:\n  other-drop: {kind: mains, path: [street, second]}\n');
    expect(work(text, 'put-right:second').needs).toEqual([]);
  });
});
