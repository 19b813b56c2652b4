import { describe, expect, it } from 'vitest';
import { metalWay } from '../../src/network/metal-way.ts';
import { strikeIn } from './strike-in.ts';

const branch = (from: number, to: number, lengthM: number) => ({ from, to, lengthM });

describe('the shortest way through metal', () => {
  const metal = [branch(0, 1, 5), branch(2, 1, 1), branch(2, 3, 0), branch(0, 3, 7), branch(4, 5, 1)];
  it('has its branches in order, with the sense in which each is passed', () => {
    expect(metalWay(6, metal, 0, 3)).toEqual({ branches: [0, 1, 2], signs: [1, -1, 1], lengthM: 6 });
    expect(metalWay(6, metal, 3, 0)).toEqual({ branches: [2, 1, 0], signs: [-1, 1, -1], lengthM: 6 });
  });
  it('is none to what nothing leads to, and empty to itself', () => {
    expect(metalWay(6, metal, 0, 5)).toBeNull();
    expect(metalWay(6, metal, 2, 2)).toEqual({ branches: [], signs: [], lengthM: 0 });
  });
});

/** A wire of 200 m upright under the channel; half way up, 10 m off, two boxes 5 m apart, bonded by a wire with a bow of so many metres. */
const tall = (bowM: number, more = '') => `
site: {name: Tall, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 3 m, diameter: 20 mm, resistance: 10 ohm}
  R2: {kind: rod, resistance: 30 ohm}
antennas:
  A: {kind: free, at: [0, 0, 200]}
bars: {p: {kind: entry panel, at: [10, 0, 100]}}
equipment: {q: {kind: computer, at: [15, 0, 100]}}
lines: {usb: {kind: usb, path: [p, q]}}
conductors:
  down: {from: A, to: R1, wire: round 8 mm copper, joints: none}
  bond: {from: p, to: q, wire: round 2 mm copper, joints: none, route: [[10, 0, 100], [10, 0, ${100 + bowM}], [15, 0, ${100 + bowM}], [15, 0, 100]]}
  lead: {from: p, to: R2, inductance: 3 uH, resistance: 1 mohm, joints: none, length: 3 m}
${more}`;

describe('the loop of a line and a bond beside what carries the stroke', () => {
  // MIL-HDBK-419A vol. I eq. 6-5 (read): 0.2 uH/m times the height of the loop times ln(15 / 10); 30 kA 1/200 rises by
  // 1.39679 of its peak in a microsecond. The far ends of wire and channel take 0.2 % off.
  const hand = (heightM: number) => 0.2e-6 * heightM * Math.log(1.5) * 1.39679e6 * 30e3;

  it.each([1, 2, 4])('%i m high: 0.2 h ln(r2 / r1) di/dt round it', (bowM) => {
    const strike = strikeIn(tall(bowM), { at: 'A' });
    const found = strike.coupling({ a: 'p', b: 'q', by: 'usb' })!;
    expect(Math.abs(found.value) / hand(bowM)).toBeGreaterThan(0.985);
    expect(Math.abs(found.value) / hand(bowM)).toBeLessThan(1.005);
    // no current in the bond: what the line sees is what the loop catches
    const seen = strike.differences.find((d) => d.pair.by === 'usb')!;
    expect(Math.abs(seen.peak.value / found.value)).toBeCloseTo(1, 6);
  });

  it('turned round has the other sign; without a place or a bond there is none', () => {
    const strike = strikeIn(tall(2), { at: 'A' });
    const [there, back] = [
      strike.coupling({ a: 'p', b: 'q', by: null })!,
      strike.coupling({ a: 'q', b: 'p', by: null })!,
    ];
    expect(there.value / back.value).toBeCloseTo(-1, 9);
    expect(strike.coupling({ a: 'p', b: 'nobody', by: null })).toBeNull();
    expect(
      strikeIn(tall(2).replace(/ {2}bond:.*\n/, ''), { at: 'A' }).coupling({ a: 'p', b: 'q', by: null }),
    ).toBeNull();
  });

  it('does not count the shield of the line itself', () => {
    const shield = tall(2).replace('kind: usb, path: [p, q]', 'kind: coax, path: [A, p, q], lengths: [210 m, 5 m]');
    const strike = strikeIn(shield, { at: 'A' });
    const [mine, all] = ['usb', null].map((by) => Math.abs(strike.coupling({ a: 'p', b: 'q', by })!.value));
    expect(mine).not.toBeCloseTo(all!, 0);
  });
});

describe('the lead of an entry panel', () => {
  it('is the shortest way to the soil, with the volts along it', () => {
    // 3 uH and 1 milliohm carry nothing here: R2 hangs on them alone
    const [lead] = strikeIn(tall(1), { at: 'A' }).leads;
    expect(lead).toMatchObject({ bar: 'p', into: 'R2', lengthM: 3 });
    expect(Math.abs(lead!.peak.value)).toBeLessThan(1e-3);
    // the whole stroke through it: 3 uH times 41.9 kA/us
    const [struck] = strikeIn(tall(1), { at: 'p' }).leads;
    expect(Math.abs(struck!.peak.value) / (3e-6 * 1.39679e6 * 30e3)).toBeCloseTo(1, 2);
  });
});

describe('the gap of a pulled line', () => {
  const text = `${tall(1).replace('kind: usb, path: [p, q]', 'kind: coax, path: [A, {plug: j}, p], lengths: [210 m, 1 m]')}
states: {storm: {open: [{at: j, gap: 2 cm, end: loose}]}}
`;
  it('has the volts of its two sides, in that state alone', () => {
    expect(strikeIn(text, { at: 'A' }).gaps).toEqual([]);
    const strike = strikeIn(text, { at: 'A', state: 'storm' });
    expect(strike.gaps).toHaveLength(1);
    expect(strike.gaps[0]).toMatchObject({ line: 'usb', gapM: { low: 0.02, high: 0.02 } });
    // the far side hangs on the antenna, the near one on the panel at remote earth
    const top = strike.peaks.find((p) => p.part === 'A')!.peak.value;
    expect(Math.abs(strike.gaps[0]!.peak.value / top)).toBeGreaterThan(0.5);
  });
});
