import { describe, expect, it } from 'vitest';
import { greatest, heidlerA, heidlerSlope, subsequent } from './heidler.ts';
import { strikeIn } from './strike-in.ts';

const wave = subsequent(12e3);
const near = (value: number, hand: number, share: number) =>
  expect(Math.abs(Math.abs(value) / hand - 1)).toBeLessThan(share);
const site = (arrester: string) => `
site: {name: Kit, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R: {kind: rod, resistance: 10 ohm}
antennas:
  A: {kind: free}
bars:
  tower-bar: {kind: tower bar}
  entry: {kind: entry panel}
arresters:
  a1: {kind: gas tube, sparkover: 90 kV, on: entry${arrester}}
equipment:
  radio: {kind: transceiver}
lines:
  feed: {kind: coax, path: [A, {bond: tower-bar}, a1, radio], lengths: [20, 10, 5], cable: RG-213}
conductors:
  lead: {from: tower-bar, to: R, inductance: 2 uH, resistance: 10 mohm, joints: none}
`;
const asked = { at: 'A', wave: '0.25/100', currentA: 12e3, detail: true } as const;

describe('leads of ground kits', () => {
  it('carry what leaves the shield, by the inductance of 0.6 m of 6 AWG (E. B. Rosa 1908)', () => {
    const { kits } = strikeIn(site(''), asked);
    expect(kits.map(({ line, at, leadM, isTyped }) => [line, at, leadM, isTyped])).toEqual([
      ['feed', 'tower-bar', 0.6, false],
    ]);
    // the shield beyond carries nothing: all of the stroke goes into the lead
    const q = 2.06e-3 / 0.6;
    const henry = 2e-7 * 0.6 * (Math.asinh(1 / q) - Math.hypot(1, q) + q);
    near(
      kits[0]!.current.value,
      greatest((t) => heidlerA(wave, t)),
      1e-3,
    );
    near(kits[0]!.volts.value, henry * greatest((t) => heidlerSlope(wave, t)), 1e-2);
  });

  it('count at a protector where its lead is typed', () => {
    const { kits } = strikeIn(site(', lead: 1.2 m'), asked);
    expect(kits.map(({ at, leadM, isTyped }) => [at, leadM, isTyped])).toEqual([
      ['tower-bar', 0.6, false],
      ['a1', 1.2, true],
    ]);
    // no way to the soil from there
    expect(Math.abs(kits[1]!.current.value)).toBeLessThan(1e-6 * 12e3);
  });
});
