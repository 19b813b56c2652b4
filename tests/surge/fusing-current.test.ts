import { describe, expect, it } from 'vitest';
import { fusingMetals, steadyFusing } from '../../src/materials/fusing.ts';
import {
  copperFusingCurrent,
  decrementFactor,
  fusingCurrent,
  leastFusingArea,
  steadyFusingCurrent,
} from '../../src/surge/fusing-current.ts';
import { gaugeAreaM2, gaugeNumber } from '../../src/units/wire-gauge.ts';

const metal = (name: string) => fusingMetals.find((m) => m.name === name)!;
/** One thousand circular mils, square metres: 1000 x pi/4 x (0.001 in)^2. */
const kcmilM2 = 1000 * (Math.PI / 4) * 25.4e-6 ** 2;

describe('IEEE Std 80', () => {
  // Table 2, factor Kf: kcmil per kA per root second from 40 C (from memory).
  it.each([
    ['annealed copper', 7.0],
    ['hard-drawn copper', 7.06],
    ['copper-clad steel wire 40 %', 10.45],
    ['copper-clad steel wire 30 %', 12.06],
    ['copper-clad steel rod', 14.64],
    ['aluminium', 12.12],
    ['steel 1020', 15.95],
    ['zinc-coated steel rod', 28.96],
    ['stainless steel 304', 30.05],
  ])('%s has the factor %d to 1 %%', (name, factor) => {
    expect(Math.abs(leastFusingArea(metal(name), 1000, 1) / kcmilM2 / factor - 1)).toBeLessThan(0.01);
  });

  /** IEEE Std 80-2000 Tables 3 and 4 (read): kA rms at 6, 15, 30, 45, 60 and 180 cycles of 60 Hz, X/R 40 and 20. */
  const tables = [
    ['2', [22, 16, 12, 10, 9, 5], [25, 18, 13, 11, 9, 5]],
    ['1', [28, 21, 16, 13, 11, 7], [32, 22, 16, 13, 12, 7]],
    ['1/0', [36, 26, 20, 17, 14, 8], [40, 28, 21, 17, 15, 9]],
    ['2/0', [45, 33, 25, 21, 18, 11], [51, 36, 26, 22, 19, 11]],
    ['3/0', [57, 42, 32, 27, 23, 14], [64, 45, 33, 27, 24, 14]],
    ['4/0', [72, 53, 40, 34, 30, 17], [81, 57, 42, 35, 30, 18]],
  ] as const;

  // The printed tables depart from the same standard's formula: from 0.6 kA below it to 4.7 % above.
  it.each(tables)("%s AWG fuses at the printed currents, within the tables' own scatter", (gauge, at40, at20) => {
    for (const [xOverR, printed] of [
      [40, at40],
      [20, at20],
    ] as const) {
      for (const [at, cycles] of [6, 15, 30, 45, 60, 180].entries()) {
        const durationS = cycles / 60;
        const symmetric = fusingCurrent(metal('annealed copper'), gaugeAreaM2(gaugeNumber(gauge)!), durationS);
        const rms = symmetric / decrementFactor(xOverR, 60, durationS) / 1000;
        expect(printed[at]!, `X/R ${xOverR}, ${cycles} cycles`).toBeGreaterThan(rms - 0.65);
        expect(printed[at]!, `X/R ${xOverR}, ${cycles} cycles`).toBeLessThan(rms * 1.0475);
      }
    }
  });

  it('current and section lead back to each other', () => {
    const steel = metal('steel 1020');
    expect(leastFusingArea(steel, fusingCurrent(steel, 50e-6, 0.5, 20), 0.5, 20) * 1e6).toBeCloseTo(50, 10);
  });

  // IEEE Std 80-2000 Table 10, 60 Hz (from memory): X/R 10, 20, 30, 40 at 6 and at 30 cycles.
  it.each([
    [0.1, [1.125, 1.232, 1.316, 1.378]],
    [0.5, [1.026, 1.052, 1.077, 1.101]],
  ] as const)('a fault of %d s has the factors %j', (durationS, printed) => {
    for (const [at, xOverR] of [10, 20, 30, 40].entries()) {
      expect(Math.abs(decrementFactor(xOverR, 60, durationS) - printed[at]!)).toBeLessThanOrEqual(0.0006);
    }
  });

  it('a fault without a direct part, or a long one, has the factor 1', () => {
    expect(decrementFactor(0, 60, 0.1)).toBe(1);
    expect(decrementFactor(20, 60, 1e6)).toBeCloseTo(1, 6);
  });
});

describe('fusing of wire', () => {
  // Preece for copper: 10 244 d^1.5 in inches (read); 16 AWG, 0.0508 in: 117 A (hand).
  it('16 AWG copper fuses at a steady 117 A', () => {
    const { factorAPerM1p5 } = steadyFusing[0]!;
    expect(steadyFusingCurrent(factorAPerM1p5, 0.0508 * 0.0254)).toBeCloseTo(117, 0);
    expect(Math.abs(steadyFusingCurrent(factorAPerM1p5, 0.0254) / 10244 - 1)).toBeLessThan(1e-3);
  });

  // Onderdonk, 2581 circular mils, 5 s, 25 C: 168.9 A (hand; a public worked example has 178 by a slip of sign).
  it('2581 circular mils of copper fuse in 5 s at 168.9 A', () => {
    expect(copperFusingCurrent(2.581 * kcmilM2, 5, 25)).toBeCloseTo(168.9, 1);
  });

  // Two equations for the same thing: they agree to a few percent.
  it('both equations agree', () => {
    const [byStandard, byHand] = [
      fusingCurrent(metal('annealed copper'), 1e-5, 1, 25),
      copperFusingCurrent(1e-5, 1, 25),
    ];
    expect(Math.abs(byStandard / byHand - 1)).toBeLessThan(0.03);
  });
});

describe('what cannot be', () => {
  const copper = metal('annealed copper');
  it.each([0, -1, Number.NaN, Infinity])('a section, time or diameter of %d is refused', (figure) => {
    expect(() => fusingCurrent(copper, figure, 1)).toThrow(RangeError);
    expect(() => fusingCurrent(copper, 1e-6, figure)).toThrow(RangeError);
    expect(() => steadyFusingCurrent(80, figure)).toThrow(RangeError);
    expect(() => copperFusingCurrent(1e-6, figure, 20)).toThrow(RangeError);
    expect(() => decrementFactor(20, figure, 1)).toThrow(RangeError);
  });

  it.each([-274, 1083, Number.NaN])('surroundings at %d C are refused', (celsius) => {
    expect(() => fusingCurrent(copper, 1e-6, 1, celsius)).toThrow(RangeError);
    expect(() => copperFusingCurrent(1e-6, 1, celsius)).toThrow(RangeError);
  });
});
