import { expect, it } from 'vitest';
import { siteOf } from './read-text.ts';

const inch = 0.0254;

it('how a conductor runs and what a joint is like can be said, and is unknown where nobody said it', () => {
  const site = siteOf(`site: {region: us, units: ft}
antennas: {whip: {kind: vertical, below_roof: 7 ft, from_wall: 18 in}, beam: {kind: yagi}}
bars: {main: {kind: main earthing bar, section: 150 mm2, metal: copper}}
arresters: {spd: {kind: mains protector, test_class: ii}}
conductors:
  told: {from: main, to: unknown, guarded: yes, rises: no, fixings: 3 ft, above_soil: 18 in, enclosure: steel pipe,
    enclosure_bonded: one end, loop: {opening: 6 in, length: 3 ft}, joints: [{kind: bolted lug, cleaned: yes, contact: 3 sq in, sealed: no, for_test: yes, bolts: 2}, clamp]}
  bare: {from: main, to: unknown}
joints: {clamp: {kind: rod clamp, cleaned: no}}
`);
  const [whip, beam] = site.antennas;
  expect([whip!.belowRoofM!.low, whip!.fromWallM!.low]).toEqual([expect.closeTo(84 * inch, 9), 18 * inch]);
  expect([beam!.belowRoofM, beam!.fromWallM]).toEqual([null, null]);
  expect([site.bars[0]!.sectionM2!.low, site.bars[0]!.metal!.name]).toEqual([expect.closeTo(150e-6, 12), 'copper']);
  expect(site.arresters[0]!.testClass).toBe('II');
  const { told, bare } = Object.fromEntries(site.conductors.map((c) => [c.id, c]));
  expect([told!.guarded, told!.rises, told!.enclosureBonded]).toEqual(['yes', 'no', 'one end']);
  expect([told!.fixingsM!.low, told!.aboveSoilM!.low]).toEqual([expect.closeTo(36 * inch, 9), 18 * inch]);
  expect([told!.loop!.openingM!.low, told!.loop!.lengthM!.low]).toEqual([6 * inch, expect.closeTo(36 * inch, 9)]);
  const { fromJoint, toJoint } = told!;
  expect([fromJoint.cleaned, fromJoint.sealed, fromJoint.forTest, fromJoint.bolts]).toEqual(['yes', 'no', 'yes', 2]);
  expect(fromJoint.contactM2!.low).toBeCloseTo(3 * inch * inch, 12);
  expect([toJoint.named, site.joints[0]!.cleaned, site.joints[0]!.sealed]).toEqual(['clamp', 'no', 'unknown']);
  expect([bare!.guarded, bare!.rises, bare!.enclosureBonded, bare!.loop]).toEqual(['unknown', 'unknown', null, null]);
});
