import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { landingsFor } from '../../../src/rework/candidates/landings.ts';
import { sceneOf } from '../../../src/rework/candidates/scene.ts';
import { changesOf } from '../../../src/rework/plan/sets-of-works.ts';
import type { Work } from '../../../src/rework/work.ts';
import { studyOfText, tryOn } from '../plan/tried-site.ts';

/** A mast that nothing leads to earth, and rods of which somebody is sure or not. */
const field = (electrodes: string, head = 'service: none') => `
site: {name: Field, region: us, units: m, ${head}, temporary: yes, storm_plan: yes, without: [telephone, cable tv, network, mains]}
electrodes:
${electrodes}
supports:
  mast: {kind: mast, height: 12, metal: aluminium, sections: one piece}
antennas: {vert: {kind: vertical, on: mast@top, dc_path: yes, touches_support: yes}}
equipment:
  panel: {kind: service panel, where: inside}
  rig: {kind: transceiver, power: 100 W, where: inside, bonded: no}
lines: none
conductors:
  other: {from: z-rod, to: unknown, wire: 6 AWG copper}
`;
const rod = (id: string, more = '') =>
  `  ${id}: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel${more}}`;
const perhaps = ', present: unknown';

/** Parts that a conductor of any work ends on. */
const landedOn = (works: readonly Work[]) =>
  new Set(
    works
      .flatMap((w) => w.changes)
      .flatMap((c) => (c.is === 'add' && c.section === 'conductors' ? [c.fields.from, c.fields.to] : []))
      .map((end) => String(end).split(/[@.]/)[0]!),
  );

describe('an electrode that may not be there', () => {
  const text = field([rod('a-rod', perhaps), rod('z-rod')].join('\n'));

  it('is no place to lead a bond to where another is surely there', () => {
    const works = candidatesOf(studyOfText(text));
    const tie = works.find((w) => w.id === 'tie-metalwork:mast')!;
    expect(tie.values).toMatchObject({ from: 'mast@base', to: 'z-rod' });
    expect(landedOn(works)).not.toContain('a-rod');
  });

  it('is not what a mast is called grounded by: the tie takes the hazard away, and is no look', () => {
    const tie = candidatesOf(studyOfText(text)).find((w) => w.id === 'tie-metalwork:mast')!;
    const after = tryOn(text, changesOf([tie]));
    if ('problem' in after) throw new Error(after.problem);
    const mast = after.findings.filter((f) => f.rule === 'mast-grounded').map((f) => f.outcome);
    expect(mast).toEqual(['met']);
  });

  it('is asked for, and nothing is led to it, where it is the only one', () => {
    const study = studyOfText(field(rod('z-rod', perhaps)));
    expect(landedOn(candidatesOf(study))).not.toContain('z-rod');
    expect(study.lookAt!.some((l) => l.at.includes('z-rod'))).toBe(true);
  });

  it('gives way to the panel of the service, whose group it may be in', () => {
    const house = field(rod('z-rod', perhaps), 'service: panel').replace(
      'to: unknown, wire: 6 AWG copper',
      'to: panel, wire: 6 AWG copper',
    );
    const works = candidatesOf(studyOfText(house));
    expect(landedOn(works)).not.toContain('z-rod');
    expect(works.find((w) => w.id === 'tie-metalwork:mast')!.values).toMatchObject({ to: 'panel' });
  });

  it('is a place to lead to once it is surely there, or planned', () => {
    for (const more of ['', ', known: planned']) {
      const study = studyOfText(field([rod('a-rod', more), rod('z-rod')].join('\n')));
      expect(candidatesOf(study).find((w) => w.id === 'tie-metalwork:mast')!.values).toMatchObject({ to: 'a-rod' });
    }
  });
});

describe('a bar that may not be there', () => {
  const shack = (present: string) => `
site: {name: Shack, region: us, units: ft, service: panel, supply: us-grounded}
electrodes:
  rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
bars:
  bar: {kind: station ground bar, where: inside${present}}
equipment:
  panel: {kind: service panel, where: inside, neutral_bonded: yes}
  rig: {kind: transceiver, where: inside, bonded: no}
lines: none
conductors:
  gec: {from: panel, to: rod, wire: 6 AWG copper, length: 5 ft}
  tie: {from: bar, to: rod, wire: 6 AWG copper, length: 5 ft}
`;
  const landings = (text: string) => {
    const scene = sceneOf(studyOfText(text));
    return landingsFor(scene, scene.groupOf('rig')!, scene.main!);
  };

  it('holds no box; one that is there does', () => {
    expect(landings(shack(''))).toEqual(['bar']);
    expect(landings(shack(perhaps))).toEqual(['panel']);
  });
});
