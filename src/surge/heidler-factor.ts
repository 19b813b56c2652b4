import { positive } from './positive.ts';

/**
 * Correction k of a Heidler wave, so that its peak is nearly the nominal one: k = exp(-(tau1 / tau2) (n tau2 / tau1)^(1/n)),
 * time constants in seconds. Within 0.5 % of the standard's rounded figures for its three strokes. F. Heidler, as in IEC
 * 62305-1 annex B (from memory).
 */
export function heidlerFactor(tau1S: number, tau2S: number, n: number): number {
  const ratio = positive(tau1S, 'tau1S') / positive(tau2S, 'tau2S');
  return Math.exp(-ratio * (positive(n, 'n') / ratio) ** (1 / n));
}
