import { describe, expect, it } from 'vitest';
import { gasTubeOf, gasTubes, sparkOverPoints } from '../../src/materials/gas-tubes.ts';
import { energyBeforeFiring, sparkOverAt } from '../../src/surge/spark-over.ts';

const points = sparkOverPoints(gasTubeOf(230)!);

describe('gas tubes (typical figures from memory, low confidence)', () => {
  it('a tolerance band of a fifth about the nominal voltage', () => {
    for (const tube of gasTubes) {
      expect(tube.dcSparkOverV.low).toBeCloseTo(0.8 * tube.nominalV, 9);
      expect(tube.dcSparkOverV.high).toBeCloseTo(1.2 * tube.nominalV, 9);
      expect(tube).toMatchObject({ confidence: 'low', doubtShare: 0.2 });
      expect(tube.source.provenance).toBe('memory');
    }
  });

  // A product list in public code (read): a 90 V tube has at most 700 V at 1 kV/us.
  it('90 V: at most 700 V at 1 kV/us', () => {
    expect(sparkOverAt(sparkOverPoints(gasTubeOf(90)!), 1e9)).toEqual({ low: 72, high: 700, beyond: false });
  });

  it('makes no tube up', () => {
    expect(gasTubeOf(200)).toBeNull();
    expect(gasTubeOf(Number.NaN)).toBeNull();
  });
});

describe('spark-over against steepness', () => {
  it('has the points of the table, and the first for anything slower', () => {
    expect(sparkOverAt(points, 100)).toEqual({ low: 184, high: 276, beyond: false });
    expect(sparkOverAt(points, 2e3)).toEqual({ low: 184, high: 276, beyond: false });
    expect(sparkOverAt(points, 100e6).high).toBeCloseTo(600, 9);
    expect(sparkOverAt(points, 1e9).high).toBeCloseTo(750, 9);
  });

  // Hand: half a decade from 600 to 750 V; one decade further 900 V.
  it('goes straight over the logarithm, and on beyond the table with a mark', () => {
    expect(sparkOverAt(points, 1e8 * Math.sqrt(10)).high).toBeCloseTo(675, 9);
    expect(sparkOverAt(points, 1e10).high).toBeCloseTo(900, 9);
    expect(sparkOverAt(points, 1e10).beyond).toBe(true);
  });

  it('never falls as the rise gets steeper', () => {
    for (const tube of gasTubes) {
      let before = 0;
      for (let log = 1; log < 12; log += 0.25) {
        const { low, high } = sparkOverAt(sparkOverPoints(tube), 10 ** log);
        expect(high).toBeGreaterThanOrEqual(before);
        expect(low).toBeLessThan(high);
        before = high;
      }
    }
  });

  it('one point is that at any steepness', () => {
    const one = [{ slopeVPerS: 1e8, sparkOverV: { low: 1, high: 2 } }];
    expect(sparkOverAt(one, 1)).toEqual({ low: 1, high: 2, beyond: false });
    expect(sparkOverAt(one, 1e9)).toEqual({ low: 1, high: 2, beyond: true });
  });

  // Worked out by hand: 1 kV/us into 50 ohm, millijoule at the spark-over.
  it.each([
    [600, 1.44],
    [700, 2.29],
    [900, 4.86],
    [1400, 18.3],
  ])('%d V lets %d mJ pass before it fires', (volts, millijoule) => {
    const found = energyBeforeFiring(volts, 1e9, 50) * 1e3;
    expect(Math.abs(found / millijoule - 1)).toBeLessThan(3e-3);
  });

  it('what cannot be', () => {
    expect(() => sparkOverAt([], 1)).toThrow(RangeError);
    expect(() => sparkOverAt([points[2]!, points[0]!], 2e9)).toThrow('rise in steepness');
    for (const figure of [0, -1, Number.NaN, Infinity]) {
      expect(() => sparkOverAt(points, figure)).toThrow(RangeError);
      expect(() => energyBeforeFiring(figure, 1e9, 50)).toThrow(RangeError);
      expect(() => energyBeforeFiring(600, figure, 50)).toThrow(RangeError);
      expect(() => energyBeforeFiring(600, 1e9, figure)).toThrow(RangeError);
    }
  });
});
