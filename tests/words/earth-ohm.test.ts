import { expect, it } from 'vitest';
import { earthText } from '../../src/report/sheet-tests.ts';
import { ohmText } from '../../src/shell/compare-page.ts';
import { earthOhmText } from '../../src/words/earth-ohm.ts';

const ohm = (low: number, high: number | null) => ({ value: null, low, high });

it('leaves out a bound that is only that of the metal on the way', () => {
  expect(earthOhmText(ohm(0.00241, 410.5))).toBe('up to 411 ohm');
  expect(earthOhmText(ohm(0, 30))).toBe('up to 30 ohm');
  expect(earthOhmText(ohm(2e-5, null))).toBeNull();
  expect(earthOhmText(ohm(0, Number.POSITIVE_INFINITY))).toBeNull();
  expect(earthOhmText(null)).toBeNull();
});

it('keeps bounds of the soil, and a reading however small', () => {
  expect(earthOhmText(ohm(24, 95))).toBe('24 to 95 ohm');
  expect(earthOhmText(ohm(601, null))).toBe('over 601 ohm');
  expect(earthOhmText(ohm(0.01, 5))).toBe('0.01 to 5 ohm');
  expect(earthOhmText(ohm(0.004, 0.004))).toBe('4 milliohm');
  expect(earthOhmText(ohm(24, 95.3), 2)).toBe('24 to 95 ohm');
});

it('is what the sheet of tests and the terminal say', () => {
  expect(earthText(ohm(3e-5, null))).toBeNull();
  expect(earthText(ohm(3e-5, 416))).toBe('up to 420 ohm');
  expect(earthText(ohm(30, null))).toBe('over 30 ohm');
  expect(ohmText(ohm(2e-5, null))).toBe('not known');
  expect(ohmText(ohm(0.00241, 410.5))).toBe('up to 411 ohm');
  expect(ohmText(ohm(2, 15.7))).toBe('2 to 15.7 ohm');
});
