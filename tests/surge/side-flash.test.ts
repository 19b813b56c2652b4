import { describe, expect, it } from 'vitest';
import { bondingDistance, mastBondingDistance, overheadBondingDistance } from '../../src/surge/bonding-distance.ts';
import { shareInRing, shareOfTwo, simpleShare } from '../../src/surge/current-share.ts';
import { separationDistance } from '../../src/surge/separation-distance.ts';

describe('separation distance, IEC 62305-3', () => {
  // A trade guide's example (read): class III, more than four conductors, brick, 10 m: 0.352, printed 0.35 m.
  it('10 m of one of many, through brick, class III: 0.35 m', () => {
    expect(separationDistance('III', 'solid', simpleShare(5), 10)).toBeCloseTo(0.352, 12);
  });

  // Hand: 0.08 x 1 x 5; 0.06 / 0.5 x 0.66 x 8.
  it('one conductor in air, class I, 5 m: 0.4 m; two through wood, class II, 8 m: 0.634 m', () => {
    expect(separationDistance('I', 'air', simpleShare(1), 5)).toBeCloseTo(0.4, 12);
    expect(separationDistance('II', 'solid', simpleShare(2), 8)).toBeCloseTo(0.6336, 12);
    expect(separationDistance('IV', 'air', 0.44, 10)).toBe(separationDistance('III', 'air', 0.44, 10));
    expect(separationDistance('IV', 'air', 0.44, 0)).toBe(0);
  });

  // Hand: (10 + 20) / (20 + 20) = 0.75; 1/8 + 0.1 + 0.2 x (10/10)^(1/3) = 0.425; 1/6 + 0.1 + 0.2 x 8^(1/3) = 0.6667.
  it('shares by geometry', () => {
    expect(shareOfTwo(10, 20)).toBeCloseTo(0.75, 12);
    expect(shareInRing(4, 10, 10)).toBeCloseTo(0.425, 12);
    expect(shareInRing(3, 1, 8)).toBeCloseTo(2 / 3, 12);
    expect(shareInRing(3, 1, 1000)).toBe(1);
  });

  // Far apart two share nothing, close together half.
  it('two conductors share between all and half', () => {
    expect(shareOfTwo(1, 1e9)).toBeCloseTo(1, 6);
    expect(shareOfTwo(1e9, 1)).toBeCloseTo(0.5, 6);
  });

  it('what cannot be', () => {
    for (const count of [0, -1, 1.5, Number.NaN]) expect(() => simpleShare(count)).toThrow(RangeError);
    expect(() => shareInRing(2, 10, 10)).toThrow(RangeError);
    for (const share of [0, 1.1, Number.NaN])
      expect(() => separationDistance('I', 'air', share, 1)).toThrow(RangeError);
    for (const length of [-1, Number.NaN, Infinity]) {
      expect(() => separationDistance('I', 'air', 1, length)).toThrow(RangeError);
    }
    for (const metres of [0, Number.NaN]) {
      expect(() => shareOfTwo(metres, 1)).toThrow(RangeError);
      expect(() => shareInRing(3, 1, metres)).toThrow(RangeError);
    }
  });
});

describe('bonding distance, NFPA 780', () => {
  const [ft, inch] = [0.3048, 0.0254];

  // Sample table (from memory), inches in air: height in feet, one, two, three conductors. The last, 36, comes out at 35.6.
  it.each([
    [10, [20, 13.3, 8.9]],
    [20, [40, 26.7, 17.8]],
    [30, [60, 40, 26.7]],
    [40, [80, 53.3, 35.6]],
  ] as const)('%d ft: %j in', (heightFt, inches) => {
    for (const [at, printed] of inches.entries()) {
      expect(bondingDistance(heightFt * ft, at + 1, 'air') / inch).toBeCloseTo(printed, 1);
    }
    expect(Math.abs(bondingDistance(40 * ft, 3, 'air') / inch / 36 - 1)).toBeLessThan(0.02);
  });

  it('is half through dense material, a sixth beside a mast, and goes by length beneath a wire', () => {
    expect(bondingDistance(6, 4, 'solid')).toBeCloseTo(1 / 2.25 / 2, 12);
    expect(mastBondingDistance(18)).toBeCloseTo(3, 12);
    expect(overheadBondingDistance(18, 2)).toBeCloseTo(2, 12);
  });

  it('what cannot be', () => {
    for (const height of [-1, Number.NaN, Infinity]) {
      expect(() => bondingDistance(height, 1, 'air')).toThrow(RangeError);
      expect(() => mastBondingDistance(height)).toThrow(RangeError);
      expect(() => overheadBondingDistance(height, 1)).toThrow(RangeError);
    }
    for (const count of [0, 2.5, Number.NaN]) expect(() => bondingDistance(1, count, 'air')).toThrow(RangeError);
  });
});
