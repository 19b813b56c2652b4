import { currentAt, slopeAt, type Wave } from './wave.ts';

/** Current and slope of a wave at one time, as `currentAt` and `slopeAt` give them. */
export interface WaveAt {
  readonly currentA: number;
  readonly slopeAPerS: number;
}

/** Both at once: for a Heidler wave, whose powers are dear, in half the time. */
export function waveAt(wave: Wave, timeS: number): WaveAt {
  if (wave.kind !== 'heidler' || timeS <= 0)
    return { currentA: currentAt(wave, timeS), slopeAPerS: slopeAt(wave, timeS) };
  const { peakA, k, tau1S, tau2S, n } = wave;
  const share = 1 / (1 + (tau1S / timeS) ** n);
  const currentA = (peakA / k) * share * Math.exp(-timeS / tau2S);
  return { currentA, slopeAPerS: currentA * ((n * (1 - share)) / timeS - 1 / tau2S) };
}
