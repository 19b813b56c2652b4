import { expect, it } from 'vitest';
import { actionIntegral, peakOf } from '../../src/surge/peak-of.ts';

const grid = (count: number, stepS: number) => Float64Array.from({ length: count }, (_, t) => t * stepS);

it('finds a peak between its samples, of either sign', () => {
  const times = grid(60, 0.1);
  for (const sign of [1, -1]) {
    const peak = peakOf(
      times,
      times.map((time) => sign * time * Math.exp(-time / 1.234)),
    );
    expect(Math.abs(peak.atS - 1.234)).toBeLessThan(1e-5);
    expect(Math.abs(peak.value / ((sign * 1.234) / Math.E) - 1)).toBeLessThan(1e-7);
  }
});

it('takes a peak that breaks off as it is sampled', () => {
  const times = Float64Array.of(0, 1, 2, 3, 3.01, 3.02, 3.04, 3.08);
  const volts = Float64Array.of(0, 100, 200, 300, 30, 31, 31, 32);
  expect(peakOf(times, volts)).toEqual({ value: 300, atS: 3 });
});

it('takes the first and the last sample, a flat and an empty list as they are', () => {
  const times = grid(6, 1);
  expect(peakOf(times, Float64Array.of(5, 4, 3, 2, 1, 0))).toEqual({ value: 5, atS: 0 });
  expect(peakOf(times, Float64Array.of(0, 1, 2, 3, 4, 5))).toEqual({ value: 5, atS: 5 });
  expect(peakOf(times, new Float64Array(6))).toEqual({ value: 0, atS: 0 });
  expect(peakOf(new Float64Array(0), new Float64Array(0))).toEqual({ value: 0, atS: 0 });
});

it('integrates the square: a ramp of 0 to 3 A in 2 s is 6 A2 s (by hand)', () => {
  const times = grid(5, 0.5);
  expect(
    Math.abs(
      actionIntegral(
        times,
        times.map((time) => 1.5 * time),
      ) - 6,
    ),
  ).toBeLessThan(1e-12);
});
