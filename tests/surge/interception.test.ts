import { describe, expect, it } from 'vitest';
import { collectionArea, mastCollectionArea } from '../../src/surge/collection-area.ts';
import { flashDensityFromThunderDays, flashDensityFromTotal, thunderDayFits } from '../../src/surge/flash-density.ts';
import { sphereRadius, sphereReach, sphereSag } from '../../src/surge/rolling-sphere.ts';
import { lineStrikesPerYear, strikesPerYear, tallObjectStrikes } from '../../src/surge/strike-frequency.ts';
import { levelFigures, protectionLevels } from '../../src/surge/stroke-levels.ts';

describe('rolling sphere', () => {
  // IEC 62305-1: 3, 5, 10, 16 kA give 20.4, 28.5, 44.7, 60.6 m (hand), rounded in the standard to 20, 30, 45, 60.
  it('the radius goes by the least peak of the level', () => {
    const radii = protectionLevels.map((level) => sphereRadius(levelFigures(level)!.leastPeakA));
    for (const [at, radius] of [20.4, 28.5, 44.7, 60.6].entries()) expect(radii[at]).toBeCloseTo(radius, 1);
    for (const [at, level] of protectionLevels.entries()) {
      expect(Math.abs(radii[at]! / levelFigures(level)!.sphereRadiusM - 1)).toBeLessThan(0.06);
    }
  });

  // Worked out by hand from the geometry: radius, rod, point, reach (the last in feet).
  it.each([
    [45, 20, 0, 37.417],
    [45, 20, 3, 21.261],
    [60, 15, 3, 20.951],
    [30, 30, 4, 15.033],
  ])('radius %d m, rod %d m, point at %d m: %d m', (radius, rod, point, reach) => {
    expect(sphereReach(radius, rod, point)).toBeCloseTo(reach, 3);
  });

  it('150 ft and a rod of 50 ft: 111.80 ft; what stands above the radius is useless', () => {
    expect(sphereReach(150, 50, 0)).toBeCloseTo(111.8, 2);
    expect(sphereReach(30, 80, 4)).toBe(sphereReach(30, 30, 4));
    expect(sphereReach(30, 10, 10)).toBe(0);
    expect(sphereReach(30, 10, 20)).toBe(0);
  });

  // Published sag (from memory), metres, for radii of 20, 30, 45 and 60 m.
  it.each([
    [10, [0.64, 0.42, 0.28, 0.21]],
    [20, [2.68, 1.72, 1.13, 0.84]],
  ] as const)('rods %d m apart: %j m', (spacing, sags) => {
    for (const [at, radius] of [20, 30, 45, 60].entries()) {
      expect(sphereSag(radius, spacing)).toBeCloseTo(sags[at]!, 2);
    }
  });

  it('passes between rods two radii apart', () => {
    expect(sphereSag(20, 40)).toBeNull();
    expect(sphereSag(20, 39.999)).toBeGreaterThan(19);
    expect(sphereSag(20, 0)).toBe(0);
  });
});

describe('how often', () => {
  // IEC 62305-2:2010 annex E, four worked examples (from memory): Ng 4, isolated; area in km2, strikes a year.
  it.each([
    ['house', 15, 20, 6, 2.58e-3, 1.03e-2],
    ['office', 20, 40, 25, 2.75e-2, 1.1e-1],
    ['hospital', 50, 150, 10, 2.23e-2, 8.93e-2],
    ['flats', 30, 20, 20, 1.79e-2, 7.16e-2],
  ])('%s', (_, length, width, height, areaKm2, perYear) => {
    const area = collectionArea(length, width, height);
    expect(Math.abs((area * 1e-6) / areaKm2 - 1)).toBeLessThan(3e-3);
    expect(Math.abs(strikesPerYear(4, area, 'isolated') / perYear - 1)).toBeLessThan(3e-3);
  });

  // Same source: a buried line of 1000 m, CI 0.5: 8.0e-2 a year.
  it('a buried line of a kilometre', () => {
    const factors = { installation: 0.5, environment: 1, type: 1 };
    expect(lineStrikesPerYear(4, 1000, factors)).toBeCloseTo(8e-2, 12);
  });

  // Hand: 9 pi 20^2 = 11 310 m2. Eriksson (from memory): 0.0112, 0.0256, 0.302 a year at 20, 30, 100 m and Ng 1.
  it('a mast of 20 m, two ways', () => {
    expect(mastCollectionArea(20)).toBeCloseTo(11310, 0);
    expect(tallObjectStrikes(1, 20)).toBeCloseTo(0.0112, 4);
    expect(tallObjectStrikes(1, 30)).toBeCloseTo(0.0256, 4);
    expect(tallObjectStrikes(1, 100)).toBeCloseTo(0.302, 3);
    const ratio = tallObjectStrikes(1, 20) / strikesPerYear(1, mastCollectionArea(20), 'isolated');
    expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
    expect(tallObjectStrikes(1, 100) / strikesPerYear(1, mastCollectionArea(100), 'isolated')).toBeCloseTo(1.07, 2);
  });

  it('a hilltop has eight times what it has among higher objects', () => {
    expect(strikesPerYear(1, 1e4, 'on a hilltop') / strikesPerYear(1, 1e4, 'among higher objects')).toBeCloseTo(8, 12);
  });

  // Hand: 40 thunder days give 4.02, 4.0, 2.78, 2.10 by the four fits.
  it('40 thunder days are 2.1 to 4.0 flashes', () => {
    const found = thunderDayFits.map(({ factor, power }) => factor * 40 ** power);
    for (const [at, printed] of [4.02, 4.0, 2.78, 2.1].entries()) expect(found[at]).toBeCloseTo(printed, 2);
    const { low, high } = flashDensityFromThunderDays(40);
    expect(low).toBeCloseTo(2.1, 2);
    expect(high).toBeCloseTo(4.02, 2);
    // they part by 1.9 at 40 days and by 3.3 at 10 (hand)
    expect(high / low).toBeCloseTo(1.9, 1);
    const at10 = flashDensityFromThunderDays(10);
    expect(at10.high / at10.low).toBeCloseTo(3.3, 1);
    expect(flashDensityFromThunderDays(0)).toEqual({ low: 0, high: 0 });
  });

  it('a quarter to a third of all flashes reach the ground', () => {
    expect(flashDensityFromTotal(12)).toEqual({ low: 3, high: 4 });
  });
});

describe('what cannot be', () => {
  it.each([0, -1, Number.NaN, Infinity])('a radius, height or peak of %d', (figure) => {
    expect(() => sphereRadius(figure)).toThrow(RangeError);
    expect(() => sphereReach(figure, 1, 0)).toThrow(RangeError);
    expect(() => sphereReach(1, figure, 0)).toThrow(RangeError);
    expect(() => sphereSag(figure, 1)).toThrow(RangeError);
    expect(() => mastCollectionArea(figure)).toThrow(RangeError);
    expect(() => tallObjectStrikes(1, figure)).toThrow(RangeError);
  });

  it.each([-1, Number.NaN, Infinity])('a length, area or density of %d', (figure) => {
    expect(() => sphereReach(1, 1, figure)).toThrow(RangeError);
    expect(() => collectionArea(figure, 1, 1)).toThrow(RangeError);
    expect(() => strikesPerYear(figure, 1, 'isolated')).toThrow(RangeError);
    expect(() => lineStrikesPerYear(1, figure, { installation: 1, environment: 1, type: 1 })).toThrow(RangeError);
    expect(() => flashDensityFromTotal(figure)).toThrow(RangeError);
    expect(() => flashDensityFromThunderDays(figure)).toThrow(RangeError);
  });
});
