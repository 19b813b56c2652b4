import { describe, expect, it } from 'vitest';
import { checkWave } from '../../src/surge/check-wave.ts';
import { heidlerFactor } from '../../src/surge/heidler-factor.ts';
import { currentAt, slopeAt, type Wave, withPeak } from '../../src/surge/wave.ts';
import { waveFigures } from '../../src/surge/wave-figures.ts';
import { waveIntegrals } from '../../src/surge/wave-integrals.ts';
import {
  wave0p25x100,
  wave1p2x50,
  wave1x200,
  wave8x20,
  wave8x20Sine,
  wave10x350,
} from '../../src/surge/wave-presets.ts';

const every: readonly Wave[] = [
  wave10x350(1),
  wave1x200(1),
  wave0p25x100(1),
  wave8x20(1),
  wave8x20Sine(1),
  wave1p2x50(1),
];

describe('a wave', () => {
  it('is nothing before its start, and finite whenever it is asked', () => {
    for (const wave of every) {
      expect(currentAt(wave, -1)).toBe(0);
      expect(slopeAt(wave, -1)).toBe(0);
      expect(currentAt(wave, 0)).toBe(0);
      for (const t of [0, 1e-300, 1e-30, 1e-12, 1e-3, 1, 1e10]) {
        expect(Number.isFinite(currentAt(wave, t)), `${wave.kind} at ${t}`).toBe(true);
        expect(Number.isFinite(slopeAt(wave, t)), `${wave.kind} at ${t}`).toBe(true);
      }
    }
  });

  it('starts without slope unless it is a double exponential or a sine', () => {
    expect(every.map((wave) => slopeAt(wave, 0) === 0)).toEqual([true, true, true, true, false, false]);
    // hand: 1.037 / 0.4074 us
    expect(slopeAt(wave1p2x50(1), 0)).toBeCloseTo(1.037 / 0.4074e-6, -1);
  });

  // Hand: (100 kA / 0.93) x 1/2 x exp(-19/485) = 51 699 A.
  it('10/350 at its own tau1 is half risen', () => {
    expect(currentAt(wave10x350(100e3), 19e-6)).toBeCloseTo((100e3 / 0.93 / 2) * Math.exp(-19 / 485), 6);
  });

  it('takes another peak', () => {
    expect(withPeak(wave8x20(1), 5).peakA).toBe(5);
    expect(currentAt(withPeak(wave8x20(1), 5), 8e-6)).toBeCloseTo(5 * currentAt(wave8x20(1), 8e-6), 12);
  });

  // IEC 62305-1 annex B, rounded figures of k: 0.93, 0.986, 0.993.
  it('k follows from the time constants to 0.5 %', () => {
    expect(Math.abs(heidlerFactor(19e-6, 485e-6, 10) / 0.93 - 1)).toBeLessThan(5e-3);
    expect(Math.abs(heidlerFactor(1.82e-6, 285e-6, 10) / 0.986 - 1)).toBeLessThan(5e-3);
    expect(Math.abs(heidlerFactor(0.454e-6, 143e-6, 10) / 0.993 - 1)).toBeLessThan(5e-3);
  });
});

describe('waves that cannot be', () => {
  it.each([0, -1, Number.NaN, Infinity])('a peak of %d is refused', (peak) => {
    for (const make of [wave10x350, wave1x200, wave0p25x100, wave8x20, wave8x20Sine, wave1p2x50])
      expect(() => make(peak)).toThrow(RangeError);
    expect(() => checkWave({ ...wave8x20(1), peakA: peak })).toThrow(RangeError);
    expect(() => waveFigures({ ...wave10x350(1), peakA: peak })).toThrow(RangeError);
  });

  it('a time constant of nothing, a front slower than the tail and a Heidler wave that starts with a jump are refused', () => {
    expect(() => checkWave({ ...wave10x350(1), tau1S: 0 })).toThrow('tau1S');
    expect(() => checkWave({ ...wave10x350(1), tau1S: 1 })).toThrow('not shorter');
    expect(() => checkWave({ ...wave10x350(1), n: 1 })).toThrow('n must be');
    expect(() => checkWave({ ...wave10x350(1), n: 31 })).toThrow('n must be');
    expect(() => checkWave({ ...wave8x20Sine(1), tauS: 1 })).toThrow('turns');
    expect(() => checkWave({ ...wave10x350(1), k: Number.NaN })).toThrow('k must be');
    expect(() => checkWave({ ...wave8x20(1), tauS: Infinity })).toThrow('tauS');
    expect(() => checkWave({ ...wave8x20Sine(1), omegaPerS: 0 })).toThrow('omegaPerS');
    expect(() => checkWave({ ...wave1p2x50(1), factor: -1 })).toThrow('factor');
    expect(() => waveIntegrals(wave8x20(1), Number.NaN)).toThrow(RangeError);
    for (const wave of every) expect(() => checkWave(wave)).not.toThrow();
  });
});
