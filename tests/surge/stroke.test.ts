import { describe, expect, it } from 'vitest';
import {
  flashIntegrals,
  mostStrokes,
  negativeFlash,
  negativeFlashAtLevel,
  positiveFlashAtLevel,
} from '../../src/surge/flash.ts';
import { flashRanges } from '../../src/surge/flash-ranges.ts';
import { stroke, strokeKinds } from '../../src/surge/stroke.ts';
import { levelFigures, protectionLevels, strokeAtLevel } from '../../src/surge/stroke-levels.ts';
import { waveFigures } from '../../src/surge/wave-figures.ts';

const of = (level: string) => levelFigures(level)!;

describe('protection levels of IEC 62305-1 (positive ones as quoted in a trade guide, negative ones from memory)', () => {
  // Peaks in kA as printed: first positive, first negative, subsequent.
  it.each([
    ['I', 200, 100, 50],
    ['II', 150, 75, 37.5],
    ['III', 100, 50, 25],
    ['IV', 100, 50, 25],
  ] as const)('%s has peaks of %d, %d and %d kA', (level, positive, negative, subsequent) => {
    const peaks = strokeKinds.map((kind) => strokeAtLevel(kind, level).wave.peakA / 1e3);
    expect(peaks).toEqual([positive, negative, subsequent]);
  });

  // Relations of the standard's annex A (from memory): Q = I T2 / 0.7, W/R = I2 T2 / 1.4; both to the rounding of the table.
  it.each(protectionLevels)('%s: charge and energy follow from peak and tail', (level) => {
    const { firstPositiveA, impulseChargeC, specificEnergyJPerOhm } = of(level);
    expect(Math.abs((firstPositiveA * 350e-6) / 0.7 / impulseChargeC - 1)).toBeLessThan(5e-3);
    expect(Math.abs((firstPositiveA ** 2 * 350e-6) / 1.4 / specificEnergyJPerOhm - 1)).toBeLessThan(6e-3);
  });

  it.each(protectionLevels)(
    '%s: the mean steepness is peak over front, the flash charge that of its parts',
    (level) => {
      const f = of(level);
      expect(f.firstNegativeMeanAPerS).toBeCloseTo(f.firstNegativeA / 1e-6, 0);
      expect(f.subsequentMeanAPerS).toBeCloseTo(f.subsequentA / 0.25e-6, 0);
      expect(f.flashChargeC).toBe(f.impulseChargeC + f.longStrokeC);
    },
  );

  // Hand, from the constants: at 200 kA 100.2 C and 10.28 MJ/ohm, a tail of 356.6 us, a peak 0.13 % high.
  it('the wave of level I has a little more than the table', () => {
    const f = waveFigures(strokeAtLevel('first-positive', 'I').wave);
    expect(f.chargeC).toBeCloseTo(100.2, 1);
    expect(f.specificEnergyJPerOhm / 1e6).toBeCloseTo(10.28, 2);
    expect(f.peakA).toBeCloseTo(200.25e3, -2);
  });

  it('says where its figures come from', () => {
    expect(strokeAtLevel('first-positive', 'II').source.provenance).toBe('second-hand');
    expect(strokeAtLevel('first-negative', 'I').source.provenance).toBe('second-hand');
    expect(strokeAtLevel('subsequent', 'III').source.provenance).toBe('memory');
  });

  it('knows no other level', () => {
    for (const name of ['V', '', 'i', 'toString', '1']) expect(levelFigures(name)).toBeNull();
  });
});

describe('strokes', () => {
  it.each([0, -30e3, 99, 1e9, Number.NaN, Infinity])('a peak of %d A is refused', (peak) => {
    expect(() => stroke('first-negative', peak)).toThrow(RangeError);
  });

  it('30 kA 1/200 has a front of 1 us and a tail of 200', () => {
    const f = waveFigures(stroke('first-negative', 30e3).wave);
    expect(f.frontS * 1e6).toBeCloseTo(0.994, 3);
    expect(f.tailS * 1e6).toBeCloseTo(200.1, 1);
  });
});

describe('flashes for heating', () => {
  // Hand: 144.497e-6 x (100 kA)^2 + 3 x 71.9986e-6 x (50 kA)^2 = 1.44497e6 + 0.539990e6 J/ohm.
  it('four strokes of level I add their action integrals', () => {
    const { specificEnergyJPerOhm } = flashIntegrals(negativeFlashAtLevel('I', 4));
    expect(specificEnergyJPerOhm / 1.98496e6).toBeCloseTo(1, 4);
  });

  // Hand: 256.883e-6 x (100 kA)^2 = 2.56883e6; long stroke 100 C in 0.5 s: 200 A, 20 kJ/ohm; charge 50.116 + 100 C.
  it('the positive flash of level III has its impulse and its long stroke', () => {
    const { chargeC, specificEnergyJPerOhm } = flashIntegrals(positiveFlashAtLevel('III'));
    expect(specificEnergyJPerOhm / 2.58883e6).toBeCloseTo(1, 4);
    expect(chargeC).toBeCloseTo(150.116, 2);
  });

  it('one stroke has no others', () => {
    expect(negativeFlash(30e3, 12e3, 1).strokes).toHaveLength(1);
  });

  it.each([0, 1.5, 27, Number.NaN])('%d strokes are refused', (count) => {
    expect(() => negativeFlash(30e3, 12e3, count)).toThrow(RangeError);
  });

  it('a current that nobody can tell is refused', () => {
    const strokes = negativeFlash(30e3, 12e3, 1).strokes;
    expect(() => flashIntegrals({ strokes, continuing: { currentA: Number.NaN, durationS: 1 } })).toThrow(RangeError);
    expect(() => flashIntegrals({ strokes, continuing: { currentA: 100, durationS: -1 } })).toThrow(RangeError);
  });

  it('the printed ranges run from low to high', () => {
    for (const { quantity, low, usual, high } of flashRanges) {
      expect((low ?? 0) <= usual.low && usual.low <= usual.high && usual.high <= high, quantity).toBe(true);
    }
    expect(flashRanges.find((r) => r.quantity === 'strokes')!.high).toBe(mostStrokes);
  });
});
