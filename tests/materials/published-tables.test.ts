import { describe, expect, it } from 'vitest';
import { resistancePerMetre } from '../../src/materials/conductor-resistance.ts';
import { galvanicDifferenceV } from '../../src/materials/galvanic-series.ts';
import { straightInductance } from '../../src/materials/straight-inductance.ts';
import { readWire, type Wire } from '../../src/materials/wire.ts';
import { exact } from '../../src/units/interval.ts';

const wire = (text: string): Wire => {
  const read = readWire(text);
  if (!read.ok) throw new Error(`${text}: ${read.code}`);
  return read.wire;
};

/** Gauge, mm² and ohm per 1000 ft of solid annealed copper at 20 °C, as printed in public wire tables (read). */
const gauges: readonly (readonly [string, number, number])[] = [
  ['14', 2.081, 2.525],
  ['12', 3.309, 1.588],
  ['10', 5.261, 0.9989],
  ['8', 8.366, 0.6282],
  ['6', 13.3, 0.3951],
  ['4', 21.15, 0.2485],
  ['2', 33.63, 0.1563],
  ['1', 42.41, 0.124],
  ['1/0', 53.48, 0.0983],
  ['2/0', 67.43, 0.078],
  ['3/0', 85.03, 0.0618],
  ['4/0', 107.2, 0.049],
];

/** Half a unit of the last printed digit. */
const halfDigit = (printed: number): number => 0.5 * 10 ** -(String(printed).split('.')[1]?.length ?? 0);

describe('American wire gauge against the published table', () => {
  it.each(gauges)('%s AWG is %d mm² and %d ohm per 1000 ft', (gauge, mm2, ohmPer1000ft) => {
    const copper = wire(`${gauge} AWG solid copper`);
    expect(Math.abs(copper.areaM2!.low * 1e6 - mm2)).toBeLessThanOrEqual(halfDigit(mm2) * 1.001);
    const ohm = resistancePerMetre(copper)!.low * 304.8;
    // The printed column rounds ρ as well: a part in a thousand beside half a digit.
    expect(Math.abs(ohm - ohmPer1000ft)).toBeLessThanOrEqual(halfDigit(ohmPer1000ft) + ohmPer1000ft * 1e-3);
    expect(copper.awg).toBe(`${gauge} AWG`);
  });

  // NEC chapter 9 table 8, stranded, 75 °C, ohm per 1000 ft (from memory).
  it.each([
    ['6', 0.491],
    ['4', 0.308],
    ['2', 0.194],
    ['1/0', 0.122],
    ['2/0', 0.0967],
    ['4/0', 0.0608],
  ] as const)('%s AWG stranded at 75 °C lies in our range: %d', (gauge, printed) => {
    const range = resistancePerMetre(wire(`${gauge} AWG stranded copper`), 75)!;
    expect(range.low * 304.8).toBeLessThanOrEqual(printed * 1.005);
    expect(range.high * 304.8).toBeGreaterThanOrEqual(printed * 0.995);
  });

  it('follows the published temperature factors 0.893 at 50 °C and 0.758 at 100 °C', () => {
    const copper = wire('16 mm2 solid copper');
    const cold = resistancePerMetre(copper)!.low;
    expect(cold / resistancePerMetre(copper, 50)!.low).toBeCloseTo(0.893, 2);
    expect(cold / resistancePerMetre(copper, 100)!.low).toBeCloseTo(0.758, 2);
  });
});

// IEC 60228 maxima at 20 °C, ohm per km (second-hand): a conductor of the nominal section must not be above them, and the
// nominal section at 17.241 nohm m lies up to 12.3 % below.
describe('metric sizes against the maxima of IEC 60228', () => {
  it.each([
    [1.5, 12.1],
    [2.5, 7.41],
    [4, 4.61],
    [6, 3.08],
    [10, 1.83],
    [16, 1.15],
    [25, 0.727],
    [35, 0.524],
    [50, 0.387],
    [70, 0.268],
    [95, 0.193],
    [120, 0.153],
  ] as const)('%d mm² is at most %d ohm/km', (mm2, most) => {
    const ohm = resistancePerMetre(wire(`${mm2} mm2 solid copper`))!.low * 1000;
    expect(ohm).toBeLessThanOrEqual(most);
    expect(ohm).toBeGreaterThan(most / 1.124);
  });
});

describe('straight inductance', () => {
  // Independently computed reference self-inductances, skin effect complete, µH (Rosa 1908 and Grover 1946 forms).
  const lengths = [0.3, 1, 3, 10, 30];
  it.each([
    ['10 AWG copper', [0.30835, 1.2686, 4.465, 17.291, 58.466]],
    ['6 AWG copper', [0.28052, 1.1759, 4.1868, 16.364, 55.683]],
    ['2 AWG copper', [0.25269, 1.0831, 3.9085, 15.436, 52.9]],
    ['2/0 AWG copper', [0.23182, 1.0135, 3.6998, 14.741, 50.813]],
    ['strap 38 mm x 0.5 mm copper', [0.1965, 0.89177, 3.331, 13.507, 47.11]],
    ['strap 76 mm x 0.8 mm copper', [0.15678, 0.75537, 2.9184, 12.128, 42.969]],
    ['strap 150 mm x 0.5 mm copper', [0.11971, 0.62412, 2.5181, 10.786, 38.936]],
  ] as const)('%s', (text, expected) => {
    lengths.forEach((length, i) => {
      const microhenry = straightInductance(wire(text), exact(length))!.low * 1e6;
      expect(Math.abs(microhenry / expected[i]! - 1)).toBeLessThan(1e-4);
    });
  });

  it('gives the practitioner and handbook figures', () => {
    // 12 in of 1/4 in wire 275 nH, of 4 in strap 144 nH (public mailing list, 2018, read); 25 m of 6 AWG 46.7 uH with
    // uniform current (Terman) and 45.5 with skin effect complete.
    const nanohenry = (text: string, depth: 'uniform' | 'skin') =>
      straightInductance(wire(text), exact(0.3048), depth)!.low * 1e9;
    expect(Math.abs(nanohenry('round 0.25 in copper', 'uniform') - 275)).toBeLessThan(0.5);
    expect(Math.abs(nanohenry('strap 4 in x 0.0125 in copper', 'skin') - 144)).toBeLessThan(0.5);
    expect(straightInductance(wire('6 AWG copper'), exact(25), 'uniform')!.low * 1e6).toBeCloseTo(46.7, 1);
    expect(straightInductance(wire('6 AWG copper'), exact(25))!.low * 1e6).toBeCloseTo(45.5, 1);
  });

  it('is unknown where size or length is, and a range where they are', () => {
    expect(straightInductance(wire('strap 8 to 10 in copper'), exact(30))!.low).toBeLessThan(
      straightInductance(wire('strap 8 to 10 in copper'), exact(30))!.high,
    );
    expect(straightInductance(null, exact(3))).toBeNull();
    expect(straightInductance(wire('6 AWG copper'), null)).toBeNull();
  });
});

// Anodic index differences as printed in MIL-STD-1250 style tables (read), volts.
describe('galvanic pairs', () => {
  it.each([
    ['copper', 'brass', 0.05],
    ['copper', 'stainless steel', 0.15],
    ['copper', 'tinned copper', 0.25],
    ['steel', 'galvanised steel', 0.35],
    ['copper', 'steel', 0.5],
    ['copper', 'aluminium', 0.55],
    ['stainless steel', 'galvanised steel', 0.7],
    ['copper', 'galvanised steel', 0.85],
    ['copper', 'zinc', 0.9],
  ] as const)('%s against %s: %d V', (a, b, volts) => {
    expect(galvanicDifferenceV(wire(`16 mm2 ${a}`).metal!, wire(`16 mm2 ${b}`).metal!)).toBeCloseTo(volts, 6);
  });
});
