import { describe, expect, it } from 'vitest';
import { electrodeResistance } from '../../src/electrodes/electrode-resistance.ts';
import { ringWire, straightWire, stripRadiusM } from '../../src/electrodes/level-wire.ts';
import { plate, plateRadiusM } from '../../src/electrodes/plate.ts';
import { mutualOfRods, slenderRod } from '../../src/electrodes/rod.ts';
import { rodGroup, rodPositions } from '../../src/electrodes/rod-group.ts';
import { star } from '../../src/electrodes/star.ts';
import { deepFlatPlate, deepUprightPlate } from './deep-plates.ts';
import { drilled, ohmOf, soil } from './shapes.ts';

const threeM = { lengthM: 3, topM: 0 };
const line = (count: number, spacingM: number) => rodGroup(threeM, 0.016, rodPositions('line', count, spacingM))!;

/** Figures of the same formulas worked out apart from this program, six digits. Soil of 100 ohm m. */
describe('closed forms to six figures', () => {
  it.each([
    ['rod 3 m x 16 mm, slender form', slenderRod(threeM, 0.016), 33.4927],
    ['the same by even leakage', mutualOfRods(threeM, threeM, 0.008), 33.4997],
    ['two rods 3 m apart, mutual', mutualOfRods(threeM, threeM, 3), 4.37995],
    ['two rods 10 m apart, mutual', mutualOfRods(threeM, threeM, 10), 1.54826],
    ['two rods 3 m apart, joined', line(2, 3), 18.9398],
    ['wire 20 m, radius 5 mm, 0.5 m deep', straightWire(20, 0.005, 0.5), 8.53524],
    ['ring 10 m across, 8 mm, 0.6 m deep', ringWire(10 * Math.PI, 0.004, 0.6), 6.44246],
    ['flat plate of radius 0.5 m, 1.5 m deep', deepFlatPlate(0.5, 1.5), 27.6113],
    ['the same on edge', deepUprightPlate(0.5, 1.5), 27.6747],
    ['plate 0.9 m square at 1.5 m', plate(plateRadiusM(0.9, 0.9), 1.5), 27.5532],
    ['rod in a column', ohmOf(electrodeResistance(drilled(3, 0.016, 0.3, 30), soil(100))) / 100, 22.6073],
  ])('%s: %d', (_, perOhmM, ohm) => {
    expect(Number((100 * perOhmM).toPrecision(6))).toBe(ohm);
  });
});

/** Other published forms of the same electrodes, written out here, and how far apart they are known to be. */
describe('closed forms against other published ones', () => {
  const { PI, log } = Math;

  it('two rods: the long-distance and short-distance series of Dwight, as in IEEE Std 142', () => {
    const far = (L: number, a: number, s: number): number =>
      (log((4 * L) / a) - 1) / (4 * PI * L) + (1 - L ** 2 / (3 * s ** 2) + (2 * L ** 4) / (5 * s ** 4)) / (4 * PI * s);
    expect(far(3, 0.008, 6) * 100).toBeCloseTo(17.9953, 4);
    expect(line(2, 6) / far(3, 0.008, 6)).toBeCloseTo(1, 2.5);
    const close = (L: number, a: number, s: number): number =>
      (log((4 * L) / a) + log((4 * L) / s) - 2 + s / (2 * L) - s ** 2 / (16 * L ** 2) + s ** 4 / (512 * L ** 4)) /
      (4 * PI * L);
    expect(close(3, 0.008, 1) * 100).toBeCloseTo(21.1089, 4);
    expect(Math.abs(line(2, 1) / close(3, 0.008, 1) - 1)).toBeLessThan(3e-4);
  });

  it('rods in line: E. D. Sunde, as in MIL-HDBK-419A equation 2-25', () => {
    const sunde = (n: number, L: number, a: number, s: number): number =>
      (log((4 * L) / a) - 1 + ((2 * L) / s) * log((2 / PI) * n)) / (2 * PI * L * n);
    expect(sunde(5, 3, 0.008, 6) * 100).toBeCloseTo(7.92706, 5);
    for (const n of [4, 5, 8, 12, 20]) {
      const ratio = sunde(n, 3, 0.008, 6) / line(n, 6);
      expect(ratio).toBeGreaterThan(0.98);
      expect(ratio).toBeLessThan(1.035);
    }
  });

  it('a straight wire: the series of Dwight, and BS 7430:2011, 9.5.5', () => {
    const series = (L: number, a: number, s: number): number =>
      (log((4 * L) / a) + log((4 * L) / s) - 2 + s / (2 * L) - s ** 2 / (16 * L ** 2) + s ** 4 / (512 * L ** 4)) /
      (4 * PI * L);
    expect(series(10, 0.005, 1) * 100).toBeCloseTo(8.53504, 5);
    expect(straightWire(20, 0.005, 0.5) / series(10, 0.005, 1)).toBeCloseTo(1, 4);
    const british = (100 / (2 * PI * 20)) * log(20 ** 2 / (1.85 * 0.5 * 0.01));
    expect(british).toBeCloseTo(8.49457, 5);
    expect(Math.abs(british / (100 * straightWire(20, 0.005, 0.5)) - 1)).toBeLessThan(0.006);
  });

  it('a buried strip 25 x 3 mm: the strip formula of Dwight', () => {
    expect(stripRadiusM(0.025, 0.003)).toBeCloseTo(0.00717, 5);
    expect((100 * straightWire(20, stripRadiusM(0.025, 0.003), 0.6)) / 8.11033).toBeCloseTo(1, 4);
  });

  // Coefficients of Dwight's stars (from memory): n arms, (ln(2L/a) + ln(2L/s) + c0 + c1 s/L + c2 (s/L)^2 + c4 (s/L)^4) / (2 n pi L)
  const stars: readonly (readonly [count: number, c: readonly number[], ohm: number])[] = [
    [3, [1.071, -0.209, 0.238, -0.054], 6.54777],
    [4, [2.912, -1.071, 0.645, -0.145], 5.61066],
    [6, [6.851, -3.128, 1.758, -0.49], 4.73367],
    [8, [10.98, -5.51, 3.26, -1.17], 4.32728],
  ];
  it.each(stars)('a star of %d arms: the series of Dwight', (count, c, ohm) => {
    const series = (L: number, a: number, s: number): number =>
      (log((2 * L) / a) +
        log((2 * L) / s) +
        c[0]! +
        (c[1]! * s) / L +
        (c[2]! * s ** 2) / L ** 2 +
        (c[3]! * s ** 4) / L ** 4) /
      (2 * count * PI * L);
    expect(series(10, 0.005, 1) * 100).toBeCloseTo(ohm, 5);
    expect(Math.abs(star(count, 10, 0.005, 0.5) / series(10, 0.005, 1) - 1)).toBeLessThan(2e-4);
    expect(Math.abs(star(count, 5, 0.005, 0.3) / series(5, 0.005, 0.6) - 1)).toBeLessThan(2e-4);
  });

  it('a star of two arms is a straight wire of twice the length', () => {
    expect(star(2, 10, 0.005, 0.5) / straightWire(20, 0.005, 0.5)).toBeCloseTo(1, 4);
    expect(star(1, 10, 0.005, 0.5)).toBe(straightWire(10, 0.005, 0.5));
  });

  it('plates: both forms agree to 1.2 % where both hold', () => {
    for (const radii of [2.7, 4, 8, 20]) {
      for (const deep of [deepFlatPlate, deepUprightPlate]) {
        expect(Math.abs(plate(0.4, 0.4 * radii) / deep(0.4, 0.4 * radii) - 1)).toBeLessThan(0.012);
      }
    }
  });

  it('a plate of any form, very deep, is a disc in endless soil: 1 / (8 r)', () => {
    for (const form of [plate, deepFlatPlate, deepUprightPlate]) expect(form(0.5, 1e6) * 4).toBeCloseTo(1, 6);
  });

  it('a rod put very deep is a rod in endless soil, half the resistance of one with its mirror image', () => {
    const deep = slenderRod({ lengthM: 3, topM: 1e7 }, 0.016);
    expect(deep).toBeCloseTo((log((4 * 3) / 0.016) - 1) / (2 * PI * 3), 6);
  });
});

/**
 * Even-leakage figures of a boundary-element solution (thin wire, 40 elements to an arm) worked out apart from this
 * program, 100 ohm m: the same physics as the closed forms, by another hand.
 */
describe('closed forms against boundary elements with even leakage', () => {
  it.each([
    ['wire 10 m, 0.5 m deep', straightWire(10, 0.005, 0.5), 14.9411],
    ['wire 30 m, 0.75 m deep', straightWire(30, 0.004, 0.75), 6.0236],
    ['wire 100 m, 0.5 m deep', straightWire(100, 0.005, 0.5), 2.213],
    ['3 arms of 10 m', star(3, 10, 0.005, 0.5), 6.5475],
    ['4 arms of 10 m', star(4, 10, 0.005, 0.5), 5.6104],
    ['6 arms of 10 m', star(6, 10, 0.005, 0.5), 4.7334],
    ['8 arms of 10 m', star(8, 10, 0.005, 0.5), 4.3275],
    ['3 arms of 5 m', star(3, 5, 0.005, 0.3), 12.1626],
    ['8 arms of 5 m', star(8, 5, 0.005, 0.3), 8.2673],
  ])('%s: %d', (_, perOhmM, ohm) => {
    expect(Math.abs((100 * perOhmM) / ohm - 1)).toBeLessThan(1e-4);
  });
});
