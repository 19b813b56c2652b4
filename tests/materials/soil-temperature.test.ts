import { describe, expect, it } from 'vitest';
import { frozenTop } from '../../src/materials/frozen-soil.ts';
import { frozenRatioAt, temperatureRatio } from '../../src/materials/soil-temperature.ts';

/** Sandy loam with 15.2 % of moisture, ohm cm by degrees C, from a booklet on earth testing (read). */
const booklet = { 20: 7200, 10: 9900, 0: 13_800, ice: 30_000, [-5]: 79_000, [-15]: 330_000 };

describe('resistivity by temperature', () => {
  it('is 1 at 20 C', () => {
    expect(temperatureRatio(20)).toEqual({ low: 1, high: 1 });
  });

  it('holds both published forms at 10 C: the booklet, and 2.5 % per degree', () => {
    const at = temperatureRatio(10)!;
    expect(at.low).toBeCloseTo(1 / 0.75, 9);
    expect(at.high).toBeCloseTo(booklet[10] / booklet[20], 9);
  });

  it('falls by 2.5 % of the conductivity at 20 C for a degree more', () => {
    expect(temperatureRatio(30)!.high).toBeCloseTo(0.8, 9);
  });

  // the booklet's table against IEEE Std 80, figure 18, as quoted (read): absolute figures differ by up to half, ratios less
  it.each([
    [0, 2.17, 2.34],
    [-5, 5.72, 10],
    [-15, 23.9, 33.4],
  ])('frozen at %d C it is %d to %d times what it is thawed at 0 C', (celsius, low, high) => {
    const ratio = frozenRatioAt(celsius)!;
    expect(Math.abs(ratio.low / low - 1)).toBeLessThan(0.005);
    expect(Math.abs(ratio.high / high - 1)).toBeLessThan(0.005);
  });

  it('holds the booklet frozen, against 20 C', () => {
    for (const [celsius, ohmCm] of [
      [-5, booklet[-5]],
      [-15, booklet[-15]],
    ] as const) {
      const { low, high } = temperatureRatio(celsius)!;
      expect(low).toBeLessThanOrEqual((ohmCm / booklet[20]) * 1.000001);
      expect(high).toBeGreaterThanOrEqual(ohmCm / booklet[20]);
    }
  });

  it('jumps at freezing: at 0 C it may be thawed or frozen', () => {
    const [thawed, either, frozen] = [temperatureRatio(0.001)!, temperatureRatio(0)!, temperatureRatio(-0.001)!];
    expect(frozen.low / thawed.high).toBeGreaterThan(2);
    expect(either.low).toBeCloseTo(thawed.low, 3);
    expect(either.high).toBeCloseTo(frozen.high, 2);
  });

  it('only rises as it gets colder, and its range never turns round', () => {
    let [low, high] = [0, 0];
    for (let celsius = 40; celsius >= -15; celsius -= 0.25) {
      const at = temperatureRatio(celsius)!;
      expect(at.low).toBeLessThanOrEqual(at.high);
      expect(at.low).toBeGreaterThanOrEqual(low);
      expect(at.high).toBeGreaterThanOrEqual(high);
      [low, high] = [celsius === 0 ? low : at.low, celsius === 0 ? high : at.high];
    }
  });

  it('has no figure beyond the curves', () => {
    for (const celsius of [-15.1, 40.1, Number.NaN]) expect(temperatureRatio(celsius)).toBeNull();
    expect(frozenRatioAt(1)).toBeNull();
  });
});

describe('a frozen top of unknown temperature', () => {
  it('holds the 10 to 30 times of an article that quotes IEEE Std 80 (read)', () => {
    expect(frozenTop.ratio.low).toBeLessThan(10);
    expect(frozenTop.ratio.high).toBeGreaterThan(30);
  });
});
