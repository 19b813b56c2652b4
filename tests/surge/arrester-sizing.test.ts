import { describe, expect, it } from 'vitest';
import { leastSparkOver, mostPower } from '../../src/surge/arrester-sizing.ts';
import {
  linePeakVolts,
  linePeakVoltsForward,
  powerOfPeakVolts,
  reflectionOf,
  sumOfCarriers,
} from '../../src/surge/line-peak-volts.ts';
import { lowestSparkOver } from '../../src/surge/spark-over.ts';

describe('peak of the RF voltage', () => {
  // A mailing-list post (read): 1500 W in 50 ohm are 274 V rms and 387 V peak, 100 W are 70.7 V rms.
  it('1500 W: 274 V rms, 387 V peak; 100 W: 70.7 V rms', () => {
    expect(linePeakVolts(1500, 50, 1)).toBeCloseTo(387, 0);
    expect(linePeakVolts(1500, 50, 1) / Math.SQRT2).toBeCloseTo(274, 0);
    expect(linePeakVolts(100, 50, 1) / Math.SQRT2).toBeCloseTo(70.7, 1);
  });

  // Worked out by hand, volts at SWR 1, 1.5, 2, 3.
  it.each([
    [100, [100, 122, 141, 173]],
    [200, [141, 173, 200, 245]],
    [500, [224, 274, 316, 387]],
    [1000, [316, 387, 447, 548]],
    [1500, [387, 474, 548, 671]],
    [3000, [548, 671, 775, 949]],
  ] as const)('%d W: %j V', (power, volts) => {
    for (const [at, swr] of [1, 1.5, 2, 3].entries()) expect(linePeakVolts(power, 50, swr)).toBeCloseTo(volts[at]!, 0);
  });

  // A maker's selection note (read): factor 1 + reflection at these SWR.
  it.each([
    [1.1, 1.05],
    [1.2, 1.09],
    [1.3, 1.13],
    [1.4, 1.17],
    [1.5, 1.2],
    [1.86, 1.3],
  ])('SWR %d raises the forward wave %d times', (swr, factor) => {
    expect(1 + reflectionOf(swr)).toBeCloseTo(factor, 2);
    expect(linePeakVoltsForward(100, 50, swr) / linePeakVolts(100, 50, 1)).toBeCloseTo(factor, 2);
  });

  it('from forward and from delivered power it is the same', () => {
    for (const swr of [1, 1.3, 3, 20]) {
      const delivered = 700 * (1 - reflectionOf(swr) ** 2);
      expect(linePeakVoltsForward(700, 50, swr)).toBeCloseTo(linePeakVolts(delivered, 50, swr), 9);
    }
  });

  it('never more than twice that of a matched line', () => {
    expect(linePeakVoltsForward(100, 50, 1e9)).toBeCloseTo(200, 5);
  });

  it('carriers add up', () => {
    expect(sumOfCarriers([100, 141, 10])).toBe(251);
    expect(sumOfCarriers([])).toBe(0);
  });
});

describe('the tube for the power', () => {
  // By hand from the trade's margin of 1.5 and a tolerance of 20 %: watt at SWR 1 and 2 in 50 ohm.
  it.each([
    [90, 23, 12],
    [150, 64, 32],
    [230, 150, 75],
    [350, 348, 174],
    [600, 1024, 512],
    [1000, 2844, 1422],
  ])('%d V: %d and %d W', (nominal, matched, mismatched) => {
    const lowest = lowestSparkOver(nominal, 0.2);
    expect(Math.round(mostPower(lowest, 50, 1))).toBe(matched);
    expect(Math.round(mostPower(lowest, 50, 2))).toBe(mismatched);
  });

  // Without tolerance or margin, V^2 / 2 Z0: what is often printed (hand).
  it.each([
    [90, 81],
    [150, 225],
    [230, 529],
    [350, 1225],
    [600, 3600],
    [1000, 10000],
  ])('%d V without tolerance or margin: %d W', (nominal, watt) => {
    expect(mostPower(lowestSparkOver(nominal, 0), 50, 1, 1)).toBeCloseTo(watt, 9);
  });

  it('power and least spark-over lead back to each other', () => {
    const least = leastSparkOver(linePeakVolts(400, 50, 1.5));
    expect(mostPower(least, 50, 1.5)).toBeCloseTo(400, 9);
    expect(powerOfPeakVolts(linePeakVolts(400, 75, 2), 75, 2)).toBeCloseTo(400, 9);
  });
});

describe('what cannot be', () => {
  it.each([0.99, 0, Number.NaN, Infinity])('an SWR or a margin of %d', (figure) => {
    expect(() => linePeakVolts(100, 50, figure)).toThrow(RangeError);
    expect(() => reflectionOf(figure)).toThrow(RangeError);
    expect(() => mostPower(100, 50, 1, figure)).toThrow(RangeError);
    expect(() => leastSparkOver(100, figure)).toThrow(RangeError);
  });

  it.each([-1, Number.NaN, Infinity])('a power, impedance or voltage of %d', (figure) => {
    expect(() => linePeakVolts(figure, 50, 1)).toThrow(RangeError);
    expect(() => linePeakVolts(100, figure, 1)).toThrow(RangeError);
    expect(() => sumOfCarriers([1, figure])).toThrow(RangeError);
    expect(() => mostPower(figure, 50, 1)).toThrow(RangeError);
    expect(() => lowestSparkOver(figure, 0.2)).toThrow(RangeError);
    expect(() => lowestSparkOver(90, figure)).toThrow(RangeError);
  });
});
