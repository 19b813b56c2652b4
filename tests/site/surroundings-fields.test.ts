import { expect, it } from 'vitest';
import { siteOf } from './read-text.ts';

const inch = 0.0254;
const both = (value: number) => ({ low: value, high: value });

it('what stands round a station can be said, and is unknown where nobody said it', () => {
  const site =
    siteOf(`site: {region: us, units: ft, certificate: plan 12 of 2024, storm_plan: yes, services_located: no}
supports: {rod: {kind: air terminal, insulating_surface: no, wall: 3/16 in}, mast: {kind: mast}}
antennas: {wire: {kind: long wire, wire: 14 AWG copper}, beam: {kind: yagi}}
arresters: {a: {kind: gas tube, near_fuel: yes, line_lead: 4 in}, b: {kind: gas tube}}
lines:
  open: {kind: open-wire, standoff: 3 in, guarded: yes, drip_loop: no}
  coax: {kind: coax}
  drop: {kind: mains, voltage: 240 V}
metalwork: {power: {kind: overhead power line, voltage: 7.2 kV}, water: {kind: water pipe, clamp_from_entry: 4 ft}}
`);
  const { certificate, stormPlan, servicesLocated } = site.header;
  expect([certificate, stormPlan, servicesLocated]).toEqual(['plan 12 of 2024', 'yes', 'no']);
  expect(site.supports.map((s) => s.insulatingSurface)).toEqual(['no', 'unknown']);
  expect(site.supports[0]!.wallM!.low).toBeCloseTo((3 / 16) * inch, 9);
  expect(site.antennas.map((a) => a.wire?.metal?.name ?? null)).toEqual(['copper', null]);
  expect(site.arresters.map((a) => [a.nearFuel, a.lineLeadM])).toEqual([
    ['yes', both(4 * inch)],
    ['unknown', null],
  ]);
  const [open, coax, drop] = site.lines;
  expect([open!.standoffM!.low, open!.guarded, open!.dripLoop]).toEqual([3 * inch, 'yes', 'no']);
  expect([coax!.standoffM, coax!.guarded, coax!.dripLoop]).toEqual([null, 'unknown', 'unknown']);
  expect(drop!.voltageV).toEqual(both(240));
  const [power, water] = site.metalwork;
  expect([power!.voltageV, power!.clampFromEntryM]).toEqual([both(7200), null]);
  expect(water!.clampFromEntryM!.low).toBeCloseTo(4 * 12 * inch, 9);
});

it('a rod put up to be struck is a support of metal', () => {
  expect(siteOf('supports: {rod: {kind: air terminal, height: 3 m}}').supports[0]!.kind).toBe('air terminal');
});
