import { expect, it } from 'vitest';
import { currentAt, slopeAt, type Wave } from '../../src/surge/wave.ts';
import { wave0p25x100, wave10x350 } from '../../src/surge/wave-presets.ts';

/** Peak of R i + L di/dt and its time in us, sampled every 0.1 ns. */
function peakAcross(wave: Wave, ohm: number, henry: number, untilS: number): readonly [volts: number, us: number] {
  let [volts, at] = [0, 0];
  for (let t = 0; t < untilS; t += 1e-10) {
    const now = ohm * currentAt(wave, t) + henry * slopeAt(wave, t);
    if (now > volts) [volts, at] = [now, t];
  }
  return [volts, at * 1e6];
}

/**
 * Single paths, where a voltage is R i + L di/dt. Reference: the same circuits stepped by ngspice 39 (trapezoidal, three step
 * sizes) and by a Radau IIA integrator of their own, which agree to 1.2e-6; volts printed to six figures, times to 1 ns.
 */
it.each([
  ['mast top, 100 kA 10/350 through 13 milliohm, 13 uH, 10 ohm', wave10x350(100e3), 10.013, 13e-6, 1003.51, 29.621],
  ['the down conductor alone', wave10x350(100e3), 0.013, 13e-6, 178.144, 18.601],
  ['its electrode', wave10x350(100e3), 10, 0, 1001.27, 31.428],
  ['mast top, 25 kA 0.25/100 through 5 milliohm, 9 uH, 25 ohm', wave0p25x100(25e3), 25.005, 9e-6, 1557.57, 0.4564],
  ['its electrode', wave0p25x100(25e3), 25, 0, 624.851, 0.9442],
] as const)('%s', (_, wave, ohm, henry, kilovolt, us) => {
  const [volts, at] = peakAcross(wave, ohm, henry, us * 2e-6);
  expect(Math.abs(volts / 1e3 / kilovolt - 1)).toBeLessThan(6e-6);
  expect(Math.abs(at - us)).toBeLessThan(1.5e-3);
});
