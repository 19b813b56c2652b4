import { describe, expect, it } from 'vitest';
import { besselRatio } from '../../src/math/bessel-ratio.ts';
import { internalImpedance, type WireMetal } from '../../src/surge/internal-impedance.ts';
import { skinDepth } from '../../src/surge/skin-depth.ts';
import { skinLadder } from '../../src/surge/skin-ladder.ts';

/** Annealed copper at 20 C, IEC 60028. */
const copper: WireMetal = { resistivityOhmM: 1.7241e-8, relativePermeability: 1 };
const steel: WireMetal = { resistivityOhmM: 1.2e-7, relativePermeability: 200 };
const gauge = (areaMm2: number) => Math.sqrt(areaMm2 / Math.PI) * 1e-3;

/** Half of the last printed digit, for a figure as it is printed. */
function halfDigit(printed: string): number {
  return 0.5001 * 10 ** -(printed.split('.')[1] ?? '').length;
}

describe('resistance and inductance of a round wire against those at 0 Hz', () => {
  // Bureau of Standards Circular 74; F. E. Terman, Radio Engineers' Handbook (1943), x = r sqrt 2 / depth (from memory).
  it.each([
    [0.5, '1.0003', '0.9998'],
    [1, '1.005', '0.997'],
    [1.5, '1.026', '0.987'],
    [2, '1.078', '0.961'],
    [2.5, '1.175', '0.913'],
    [3, '1.318', '0.845'],
    [3.5, '1.492', '0.766'],
    [4, '1.678', '0.686'],
    [5, '2.043', '0.556'],
    [6, '2.394', '0.465'],
    [7, '2.743', '0.400'],
    [8, '3.094', '0.351'],
    [10, '3.799', '0.282'],
    [15, '5.562', '0.188'],
    [20, '7.328', '0.141'],
    [30, '10.86', '0.094'],
    [50, '17.93', '0.057'],
    [100, '35.61', '0.028'],
  ])('x = %d: %s and %s', (x, resistance, inductance) => {
    const { re, im } = besselRatio(x);
    // L / L0 = X / (omega mu / 8 pi): omega mu r^2 / rho = x^2, so it is im / (x^2 / 8)
    expect(Math.abs(re - Number(resistance))).toBeLessThanOrEqual(halfDigit(resistance));
    expect(Math.abs((8 * im) / (x * x) - Number(inductance))).toBeLessThanOrEqual(halfDigit(inductance));
  });
});

describe('copper wire', () => {
  // Worked out apart from this program with Bessel functions; milliohm and nanohenry for each metre, four figures.
  const frequencies = [60, 1e3, 1e4, 1e5, 1e6, 1e7];
  it.each([
    [5.261, [3.277, 3.287, 4.087, 11.01, 32.92, 102.3], [50, 49.92, 43.94, 16.06, 5.104, 1.615]],
    [13.3, [1.296, 1.321, 2.369, 6.717, 20.51, 64.14], [50, 49.52, 31.42, 10.13, 3.211, 1.016]],
    [67.43, [0.2561, 0.3485, 0.9635, 2.899, 9.027, 28.41], [49.95, 41.21, 14.2, 4.509, 1.426, 0.4511]],
  ])('of %d mm2, 60 Hz to 10 MHz', (areaMm2, milliohm, nanohenry) => {
    frequencies.forEach((frequencyHz, i) => {
      const z = internalImpedance(copper, gauge(areaMm2), frequencyHz);
      expect(Math.abs((z.resistanceOhmPerM * 1e3) / milliohm[i]! - 1), `${frequencyHz} Hz`).toBeLessThan(6e-4);
      expect(Math.abs((z.inductanceHPerM * 1e9) / nanohenry[i]! - 1), `${frequencyHz} Hz`).toBeLessThan(6e-4);
    });
  });

  // 3.35 Terman's table (read, second-hand), 3.36 by theory.
  it('10 AWG at 100 kHz has 3.36 times its resistance', () => {
    const at = (hz: number) => internalImpedance(copper, gauge(5.261), hz).resistanceOhmPerM;
    expect(at(1e5) / at(0)).toBeCloseTo(3.36, 2);
  });

  // Hand: rho / (pi r^2) = 1.7241e-8 / 13.3e-6 = 1.2963 milliohm/m; mu0 / 8 pi = 50 nH/m.
  it('at 0 Hz: all of the section, 50 nH/m', () => {
    const z = internalImpedance(copper, gauge(13.3), 0);
    expect(z.resistanceOhmPerM).toBeCloseTo(1.7241e-8 / 13.3e-6, 10);
    expect(z.inductanceHPerM).toBeCloseTo(50e-9, 15);
    const slow = internalImpedance(copper, gauge(13.3), 1e-6);
    expect(slow.inductanceHPerM).toBeCloseTo(50e-9, 14);
  });

  // r / (2 depth) + 1/4, within 1.2 % for r / depth of 2 or more (textbook approximation).
  it('comes to a skin of one depth and a bit', () => {
    for (const ratio of [2, 3, 5, 10, 100]) {
      const radiusM = ratio * skinDepth(copper.resistivityOhmM, 1e5);
      const z = internalImpedance(copper, radiusM, 1e5);
      const own = copper.resistivityOhmM / (Math.PI * radiusM * radiusM);
      expect(Math.abs(z.resistanceOhmPerM / own / (ratio / 2 + 0.25) - 1)).toBeLessThan(0.012);
    }
  });
});

describe('skin depth', () => {
  // A public table (read), mm at 60 Hz, 1 kHz, 20 kHz, 200 kHz; two figures. Silicon steel (50 microohm cm, its
  // usual figure) at 20 kHz is printed 0.95 there, ten times what its own column asks for; copper at 20 kHz, 0.467, is cut off.
  it.each([
    ['copper', 1.7241e-8, 1, ['8.5', '2.1', '0.46', '0.15']],
    ['aluminium', 2.8264e-8, 1, ['11', '2.7', '0.60', '0.19']],
    ['silicon steel', 5e-7, 700, ['1.7', '0.43', '0.095', '0.030']],
  ])('%s', (_, resistivityOhmM, permeability, printedMm) => {
    [60, 1e3, 2e4, 2e5].forEach((hz, i) => {
      const mm = skinDepth(resistivityOhmM, hz, permeability) * 1e3;
      expect(Math.abs(mm - Number(printedMm[i]!))).toBeLessThanOrEqual(
        printedMm[i] === '0.46' ? 0.01 : halfDigit(printedMm[i]!),
      );
    });
  });

  // Hand: sqrt(1.7241e-8 / (pi 1e6 4 pi 1e-7)) = 0.0661 mm.
  it('copper at 1 MHz: 0.0661 mm', () => {
    expect(skinDepth(1.7241e-8, 1e6) * 1e3).toBeCloseTo(0.0661, 4);
  });
});

describe('a ladder in place of the Bessel functions', () => {
  function ladderAt(metal: WireMetal, radiusM: number, highestHz: number, hz: number) {
    let [re, im] = [0, 0];
    for (const { resistanceOhmPerM, inductanceHPerM } of skinLadder(metal, radiusM, highestHz).branches) {
      const reactance = 2 * Math.PI * hz * inductanceHPerM;
      const square = resistanceOhmPerM ** 2 + reactance ** 2;
      re += resistanceOhmPerM / square;
      im -= reactance / square;
    }
    return { re: re / (re * re + im * im), im: -im / (re * re + im * im) };
  }

  it.each([
    ['10 AWG', copper, gauge(5.261), 1e7],
    ['2/0 AWG', copper, gauge(67.43), 1e7],
    ['fine wire', copper, 5e-5, 1e7],
    ['1 mm wire to 100 kHz', copper, 1e-3, 1e5],
    ['8 mm steel', steel, 0.004, 1e7],
    ['steel leg 30 mm', steel, 0.015, 1e7],
  ])('%s, 10 Hz up: no farther off than it says', (_, metal, radiusM, highestHz) => {
    const { branches, error } = skinLadder(metal, radiusM, highestHz);
    expect(branches.every((b) => b.resistanceOhmPerM > 0 && b.inductanceHPerM > 0)).toBe(true);
    expect(error).toBeLessThanOrEqual(0.022);
    let worst = 0;
    for (let hz = 10; hz <= highestHz; hz *= 1.07) {
      const ours = ladderAt(metal, radiusM, highestHz, hz);
      const exact = internalImpedance(metal, radiusM, hz);
      const reactance = 2 * Math.PI * hz * exact.inductanceHPerM;
      const off = Math.hypot(ours.re - exact.resistanceOhmPerM, ours.im - reactance);
      worst = Math.max(worst, off / Math.hypot(exact.resistanceOhmPerM, reactance));
    }
    expect(worst).toBeLessThan(error * 1.005);
  });

  it('at 0 Hz it is the wire', () => {
    const own = internalImpedance(copper, 0.002, 0).resistanceOhmPerM;
    expect(ladderAt(copper, 0.002, 1e7, 0).re / own).toBeCloseTo(1, 12);
  });

  it('is small: one branch for each decade and one', () => {
    expect(skinLadder(copper, gauge(13.3), 1e7).branches.length).toBe(6);
    expect(skinLadder(copper, gauge(5.261), 1e7).branches.length).toBe(5);
  });
});
