import { describe, expect, it } from 'vitest';
import type { Complex } from '../../src/math/bessel-ratio.ts';
import {
  braidTransferImpedance,
  coreToShieldVolts,
  type ShieldSpan,
  tubeTransferImpedance,
} from '../../src/surge/shield-transfer.ts';

const copper = { resistivityOhmM: 1.7241e-8, relativePermeability: 1 };
const size = ({ re, im }: Complex) => Math.hypot(re, im);

describe('a solid tube', () => {
  // 1 milliohm/m copper tube with a wall of 0.2 mm, worked out apart from this program; milliohm/m.
  it.each([
    [1e4, 1],
    [1e5, 0.982],
    [1e6, 0.416],
  ])('0.2 mm of copper at %d Hz: %d of its resistance', (hz, expected) => {
    expect(size(tubeTransferImpedance(1e-3, 0.2e-3, copper, hz)) * 1e3).toBeCloseTo(expected, 3);
  });

  /** k t / sinh(k t) = product over n of 1 / (1 + (k t)^2 / (n pi)^2), (k t)^2 = 2 j u^2. */
  function byProduct(u: number): Complex {
    let [re, im] = [1, 0];
    for (let n = 1; n <= 200_000; n++) {
      const part = (2 * u * u) / (n * Math.PI) ** 2;
      [re, im] = [(re + im * part) / (1 + part * part), (im - re * part) / (1 + part * part)];
    }
    return { re, im };
  }

  it('is the product over the zeros of sinh, phase too', () => {
    for (const hz of [1e3, 3e5, 1e6, 5e6]) {
      const u = 0.2e-3 * Math.sqrt((Math.PI * hz * 4e-7 * Math.PI) / 1.7241e-8);
      const [ours, theirs] = [tubeTransferImpedance(1, 0.2e-3, copper, hz), byProduct(u)];
      expect(ours.re).toBeCloseTo(theirs.re, 4);
      expect(ours.im).toBeCloseTo(theirs.im, 4);
    }
  });

  it('at 0 Hz is its resistance, at high ones nothing, and overflows nowhere', () => {
    expect(tubeTransferImpedance(0.004, 0.2e-3, copper, 0)).toEqual({ re: 0.004, im: 0 });
    expect(size(tubeTransferImpedance(0.004, 1e-2, copper, 1e12))).toBe(0);
  });
});

describe('a braid', () => {
  // Hand: 2 pi 1 MHz x 0.5 nH/m = 3.1416 milliohm/m beside 3.9.
  it('3.9 milliohm/m and 0.5 nH/m at 1 MHz', () => {
    const { re, im } = braidTransferImpedance(3.9e-3, 0.5e-9, 1e6);
    expect(re).toBe(3.9e-3);
    expect(im * 1e3).toBeCloseTo(Math.PI, 9);
  });
});

describe('core to shield', () => {
  const span = (lengthM: number, ohmPerM: number, currentA: number): ShieldSpan => ({
    lengthM,
    resistanceOhmPerM: ohmPerM,
    leakageHPerM: 0,
    currentA,
    slopeAPerS: 0,
  });

  // 1.2 and 4.1 ohm/1000 ft of shield (from memory); hand: 5 kA x 30 m x 3.9 milliohm/m = 585 V, x 13.5 = 2.03 kV.
  it('5 kA on 30 m: 585 V on a thick line, 2.03 kV on a thin one', () => {
    expect(coreToShieldVolts([span(30, 3.9e-3, 5e3)])).toBeCloseTo(585, 9);
    expect(coreToShieldVolts([span(30, 13.5e-3, 5e3)]) / 1e3).toBeCloseTo(2.03, 2);
  });

  it('sums the stretches between bonds, each with its own current', () => {
    const two = [span(12, 3.9e-3, 5e3), span(18, 3.9e-3, 5e3)];
    expect(coreToShieldVolts(two)).toBeCloseTo(585, 9);
    expect(coreToShieldVolts([span(12, 3.9e-3, 5e3), span(18, 3.9e-3, -500)])).toBeCloseTo(234 - 35.1, 9);
    expect(coreToShieldVolts([])).toBe(0);
  });

  // Hand: 20 m x 0.5 nH/m x 50 kA/us = 500 V.
  it('a steep current leaks through the holes of a braid', () => {
    const leaking = { ...span(20, 0, 0), leakageHPerM: 0.5e-9, slopeAPerS: 50e9 };
    expect(coreToShieldVolts([leaking])).toBeCloseTo(500, 9);
  });
});
