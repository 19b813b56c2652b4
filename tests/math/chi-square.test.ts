import { expect, it } from 'vitest';
import { chiSquareLimit, type Level } from '../../src/math/chi-square.ts';

/** scipy.stats.chi2.ppf: degrees of freedom, then 0.95, 0.99, 0.999. */
const known: readonly (readonly [freedom: number, at95: number, at99: number, at999: number])[] = [
  [1, 3.8415, 6.6349, 10.8276],
  [2, 5.9915, 9.2103, 13.8155],
  [3, 7.8147, 11.3449, 16.2662],
  [4, 9.4877, 13.2767, 18.4668],
  [5, 11.0705, 15.0863, 20.515],
  [6, 12.5916, 16.8119, 22.4577],
  [8, 15.5073, 20.0902, 26.1245],
  [10, 18.307, 23.2093, 29.5883],
  [15, 24.9958, 30.5779, 37.6973],
  [30, 43.773, 50.8922, 59.7031],
  [60, 79.0819, 88.3794, 99.6072],
];

it('chi-square limits are those of scipy within 2 %, exact for one and two, within 1 % above five', () => {
  for (const [freedom, ...limits] of known) {
    ([0.95, 0.99, 0.999] satisfies Level[]).forEach((level, at) => {
      const off = Math.abs(chiSquareLimit(freedom, level) / limits[at]! - 1);
      expect(off, `${freedom} ${level}`).toBeLessThan(freedom <= 2 ? 2e-5 : freedom > 5 ? 0.01 : 0.02);
    });
  }
});
