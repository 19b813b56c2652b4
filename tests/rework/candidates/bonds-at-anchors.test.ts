import { expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import type { SiteChange } from '../../../src/study/try-change.ts';
import { studyOfText, tryOn } from '../plan/tried-site.ts';

/** A guy on a rod of its own that nothing joins to the ring at the tower. */
const site = (ring: string) => `
site: {name: Anchor, region: us, units: ft, service: panel, without: [telephone]}
electrodes:
  service-rod: {kind: rod, at: [0, 0], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  ring: {kind: buried wire, route: [[20, -10], [40, -10], [40, 10], [20, 10], [20, -10]], depth: 30 in, wire: ${ring}, closed: yes}
  anchor-rod: {kind: rod, at: [90, 0], length: 8 ft, diameter: 5/8 in, metal: galvanised steel}
supports:
  tower: {kind: lattice tower, at: [30, 0], height: 60 ft, metal: galvanised steel, sections: bolted, guys: {g1: {anchor: [90, 0], metal: galvanised steel, turnbuckle: no, insulators: no}}}
equipment: {panel: {kind: service panel, at: [1, 0], where: inside, neutral_bonded: yes}}
lines: none
conductors:
  gec: {from: panel, to: service-rod, wire: 6 AWG copper, length: 4 ft}
  tie: {from: service-rod, to: ring, wire: 2 AWG tinned copper, length: 20 ft, buried: 18 in}
  leg: {from: tower@base, to: ring, wire: 2 AWG tinned copper, length: 8 ft}
  ga: {from: g1@anchor, to: anchor-rod, wire: round 8 mm galvanised steel, length: 3 ft, buried: no}
`;
const rule = 'galvanised-and-copper-in-soil';
const bondIn = (text: string) => candidatesOf(studyOfText(text)).find((w) => w.id === 'bond:anchor-rod')!;
const after = (text: string) => {
  const tried = tryOn(text, bondIn(text).changes);
  if ('problem' in tried) throw new Error(tried.problem);
  return tried.findings.find((f) => f.rule === rule && f.at.includes('g1'))!.outcome;
};

it('a bond to a zinc-coated rod at an anchor is of tinned wire, and leaves nothing that eats the shaft', () => {
  const text = site('2 AWG tinned copper');
  expect(bondIn(text).values.wire).toBe('6 AWG tinned copper');
  expect(after(text)).toBe('met');
});

it('one to a copper rod at an anchor too, for when that is replaced; one to a rod of another metal at no anchor is not', () => {
  const copper = site('2 AWG tinned copper').replace(
    'diameter: 5/8 in, metal: galvanised steel}',
    'diameter: 5/8 in, metal: copper-clad steel}',
  );
  expect(bondIn(copper).values.wire).toBe('6 AWG tinned copper');
  const noGuy = copper.replace(/^ {2}ga: .*\n/m, '');
  expect(bondIn(noGuy).values.wire).toBe('6 AWG copper');
});

it('the usual wire to a ring of bare copper would eat the shaft, so that is tinned too', () => {
  const text = site('2 AWG copper');
  expect(bondIn(text).values.wire).toBe('6 AWG tinned copper');
  expect(after(text)).toBe('met');
  const [change] = bondIn(text).changes;
  const bare = { ...change!, fields: { ...(change as { fields: object }).fields, wire: '6 AWG copper' } } as SiteChange;
  const tried = tryOn(text, [bare]);
  if ('problem' in tried) throw new Error(tried.problem);
  expect(tried.findings.find((f) => f.id === `${rule}:g1`)?.outcome).toBe('not met');
});
