import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import type { Work } from '../../../src/rework/work.ts';
import { sayWork } from '../../../src/words/say-work.ts';
import { studyOfText, tryOn } from '../plan/tried-site.ts';

interface Asked {
  readonly wire?: string;
  readonly mast?: string;
  readonly joints: string;
  readonly more?: string;
}

const site = ({
  wire = '2 AWG copper',
  mast = 'kind: lattice tower, legs: 3, metal: galvanised steel',
  joints,
  more = '',
}: Asked) => `
site: {name: Lead, region: us, units: ft, service: panel}
electrodes: {rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}}
supports: {mast: {${mast}, height: 25 ft, sections: welded}}
antennas: {v: {kind: vertical, on: mast@top, dc_path: yes}}
bars: {plate: {kind: entry panel, where: outside}}
equipment: {panel: {kind: service panel, where: inside}}
lines: none
${more}
conductors:
  c1: {from: panel, to: rod, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, exothermic weld]}
  c2: {from: mast@base, to: rod, wire: 6 AWG copper, length: 6 ft, joints: [bolted lug, exothermic weld]}
  c3: {from: mast@base, to: plate, wire: ${wire}, length: 6 ft, joints: ${joints}}
  c4: {from: plate, to: rod, wire: ${wire}, length: 6 ft, joints: [bolted lug, {kind: rod clamp, listed: no}]}
`;

const joints = (text: string): readonly Work[] =>
  candidatesOf(studyOfText(text)).filter((w) => w.kind === 'replace-joint');
const made = (text: string, subject: string): unknown => {
  const change = joints(text).find((w) => w.id === `replace-joint:${subject}`)?.changes[0];
  return change?.is === 'set' ? change.value : undefined;
};

const forBoth = { kind: 'bolted lug', listed: 'yes', for_burial: 'no' };

describe('a joint of aluminium', () => {
  const wire = '2 AWG aluminium';

  it('is no weld: on the steel of a tower and on a plate it is a lug that is made for both metals', () => {
    expect(made(site({ wire, joints: '[solder, solder]' }), 'c3')).toEqual([
      { ...forBoth, kind: 'bolted lug', bolts: 2 },
      forBoth,
    ]);
  });

  it('to a rod in soil is made by nothing: for a person', () => {
    const text = site({ wire, joints: '[bolted lug, bolted lug]' });
    expect(studyOfText(text).findings.some((f) => f.id.includes('c4:rod') && f.outcome === 'not met')).toBe(true);
    expect(made(text, 'c4')).toBeUndefined();
  });

  it('is a lug too where the mast is of aluminium and the wire of copper', () => {
    const mast = 'kind: lattice tower, legs: 3, metal: aluminum';
    expect(made(site({ mast, joints: '[solder, bolted lug]' }), 'c3')).toEqual([
      { ...forBoth, bolts: 2 },
      'bolted lug',
    ]);
    const lead = candidatesOf(studyOfText(site({ mast, joints: '[bolted lug, bolted lug]' }))).find(
      (w) => w.id === 'second-path:mast-legs',
    );
    const ends = lead?.changes.flatMap((c) => (c.is === 'add' && 'joints' in c.fields ? [c.fields.joints] : []));
    expect(ends?.[0]).toEqual([{ ...forBoth, bolts: 2 }, 'exothermic weld']);
  });

  it('by a clamp with a name gets a fitting for both metals, and no metal of the old one', () => {
    const more = 'joints: {k: {kind: sheet-metal screw, metal: galvanised steel, on: plate}}';
    const text = site({ wire, joints: '[bolted lug, k]', more });
    const work = joints(text).find((w) => w.id === 'replace-joint:k')!;
    expect(work.materials.map((m) => m.name)).toEqual(['bolted lug for aluminium and copper']);
    expect(Object.fromEntries(work.changes.map((c) => (c.is === 'set' ? [c.field, c.value] : [])))).toMatchObject({
      kind: 'bolted lug',
      listed: 'yes',
      for_burial: 'no',
      metal: null,
    });
    expect(tryOn(text, work.changes)).not.toHaveProperty('problem');
    const { steps } = sayWork(work.values, { terms: 'us', unitsFirst: 'us' });
    expect(steps.join(' ')).toContain('marked for aluminium and copper');
  });
});

it('of copper on steel and on rods stays a weld', () => {
  const text = site({ joints: '[solder, solder]' });
  expect(made(text, 'c3')).toEqual(['exothermic weld', 'bolted lug']);
  expect(made(text, 'c4')).toEqual(['bolted lug', 'exothermic weld']);
  const [work] = joints(text);
  expect(sayWork(work!.values, { terms: 'us', unitsFirst: 'us' }).steps.join(' ')).not.toContain('aluminium');
});
