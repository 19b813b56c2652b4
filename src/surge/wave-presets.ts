import { positive } from './positive.ts';
import type { CubedExponentialWave, DampedSineWave, DoubleExponentialWave, HeidlerWave } from './wave.ts';

/** First positive impulse, 10/350. Constants of IEC 62305-1:2010 annex B, read as quoted in published research scripts. */
export const firstPositiveShape = { k: 0.93, tau1S: 19e-6, tau2S: 485e-6, n: 10 } as const;
/** First negative impulse, 1/200; same source. */
export const firstNegativeShape = { k: 0.986, tau1S: 1.82e-6, tau2S: 285e-6, n: 10 } as const;
/** Subsequent impulse, 0.25/100; same source. */
export const subsequentShape = { k: 0.993, tau1S: 0.454e-6, tau2S: 143e-6, n: 10 } as const;

/** 10/350 of a nominal peak, ampere. The standard's rounded constants make its peak 0.13 % higher, its tail 1.9 % longer. */
export function wave10x350(peakA: number): HeidlerWave {
  return { kind: 'heidler', peakA: positive(peakA, 'peakA'), ...firstPositiveShape };
}

/** 1/200 of a nominal peak, ampere. */
export function wave1x200(peakA: number): HeidlerWave {
  return { kind: 'heidler', peakA: positive(peakA, 'peakA'), ...firstNegativeShape };
}

/** 0.25/100 of a nominal peak, ampere. */
export function wave0p25x100(peakA: number): HeidlerWave {
  return { kind: 'heidler', peakA: positive(peakA, 'peakA'), ...subsequentShape };
}

/** The 8/20 current of test generators, in the form of IEEE C62.41.2 (from memory): it never swings back. */
export function wave8x20(peakA: number): CubedExponentialWave {
  return { kind: 'cubed-exponential', peakA: positive(peakA, 'peakA'), factorPerS3: 0.01243e18, tauS: 3.911e-6 };
}

/** 8/20 as a damped sine, constants of a public listing of test waves (read): swings back after 26 us. */
export function wave8x20Sine(peakA: number): DampedSineWave {
  const shape = { factor: 1 / 0.615, tauS: 24e-6, omegaPerS: 0.120023e6 };
  return { kind: 'damped-sine', peakA: positive(peakA, 'peakA'), ...shape };
}

/** The 1.2/50 voltage of test generators, volts in the place of ampere; IEEE C62.41.2 (from memory). */
export function wave1p2x50(peakV: number): DoubleExponentialWave {
  return doubleExponential(peakV, 1.037, 0.4074e-6, 68.22e-6);
}

/** The 10/1000 current of tests of telephone protectors; IEEE C62.41.2 (from memory). */
export function wave10x1000(peakA: number): DoubleExponentialWave {
  return doubleExponential(peakA, 1.019, 3.827e-6, 1404e-6);
}

/** Components of a flash for tests of aircraft, MIL-STD-464 (from memory): I0 (exp(-a t) - exp(-b t)), a and b per second. */
export const aircraftComponents = {
  /** First return stroke. */
  A: fromRates(200e3, 218_810, 11_354, 647_265),
  /** Restrike. */
  D: fromRates(100e3, 109_405, 22_708, 1_294_530),
  /** One of a burst. */
  H: fromRates(10e3, 10_572, 187_191, 19_105_100),
} as const;

/** exp(-a t) - exp(-b t) = (1 - exp(-(b - a) t)) exp(-a t). */
function fromRates(peakA: number, ampere: number, aPerS: number, bPerS: number): DoubleExponentialWave {
  return doubleExponential(peakA, ampere / peakA, 1 / (bPerS - aPerS), 1 / aPerS);
}

function doubleExponential(peakA: number, factor: number, frontS: number, tailS: number): DoubleExponentialWave {
  return { kind: 'double-exponential', peakA: positive(peakA, 'peakA'), factor, frontS, tailS };
}
