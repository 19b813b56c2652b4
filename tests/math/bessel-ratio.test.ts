import { describe, expect, it } from 'vitest';
import { besselRatio } from '../../src/math/bessel-ratio.ts';

describe('ratio of the modified Bessel functions of a round wire', () => {
  /** z I0(z) / (2 I1(z)) by the power series of both: sums of (z^2 / 4)^k / (k! k!) and / (k! (k + 1)!), z^2 = j x^2. */
  function bySeries(x: number): readonly [number, number] {
    const q = (x * x) / 4;
    const top = Float64Array.of(1, 0);
    const bottom = Float64Array.of(1, 0);
    let size = 1;
    for (let k = 1; k < 40; k++) {
      size *= q / k / k;
      // powers of j
      const term = k % 4 < 2 ? size : -size;
      top[k % 2]! += term;
      bottom[k % 2]! += term / (k + 1);
    }
    const square = bottom[0]! ** 2 + bottom[1]! ** 2;
    return [
      (top[0]! * bottom[0]! + top[1]! * bottom[1]!) / square,
      (top[1]! * bottom[0]! - top[0]! * bottom[1]!) / square,
    ];
  }

  it.each([0, 0.01, 0.5, 1, 2, 4, 6])('is that of their power series at %d', (x) => {
    const [re, im] = bySeries(x);
    expect(besselRatio(x).re).toBeCloseTo(re, 12);
    expect(besselRatio(x).im).toBeCloseTo(im, 12);
  });

  // mpmath at 30 digits: z besseli(0, z) / (2 besseli(1, z)) with z = x exp(j pi / 4).
  it.each([
    [10, 3.798576052182256, 3.520241175204764],
    [29.9, 10.82567351197256, 10.56659597287982],
    [100, 35.60666470624329, 35.35399431016625],
    [1000, 353.8035231756208, 353.5532578230783],
  ])('equals mpmath at %d', (x, re, im) => {
    expect(besselRatio(x).re).toBeCloseTo(re, 11);
    expect(besselRatio(x).im).toBeCloseTo(im, 11);
  });

  it('does not jump where the asymptotic series takes over', () => {
    const [before, after] = [besselRatio(30), besselRatio(30 + 1e-9)];
    expect(Math.abs(after.re - before.re)).toBeLessThan(1e-9);
    expect(Math.abs(after.im - before.im)).toBeLessThan(1e-9);
  });

  // Skin depth against which the wire is flat: R / R0 = r / (2 delta) + 1/4, and r / (2 delta) for X.
  it('is half of z, and a quarter, at large ones, without overflow', () => {
    expect(besselRatio(1e6).re).toBeCloseTo(1e6 / Math.SQRT2 / 2 + 0.25, 5);
    expect(besselRatio(1e6).im).toBeCloseTo(1e6 / Math.SQRT2 / 2, 5);
  });

  it('refuses what is no figure', () => {
    expect(() => besselRatio(-1)).toThrow(RangeError);
    expect(() => besselRatio(Number.NaN)).toThrow(RangeError);
  });
});
