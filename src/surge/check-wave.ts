import { positive, within } from './positive.ts';
import type { Wave } from './wave.ts';

/**
 * Refuses (RangeError) a wave that cannot be: a peak, a factor or a time constant that is not above zero and finite, a Heidler
 * front slower than its tail, a Heidler exponent below 2 (it would not start without slope) or above 30 (all but a jump), a
 * sine that turns by more than 1000 radians before it has died to 1/e.
 */
export function checkWave(wave: Wave): void {
  positive(wave.peakA, 'peakA');
  switch (wave.kind) {
    case 'heidler':
      positive(wave.k, 'k');
      within(wave.n, 2, 30, 'n');
      positive(wave.tau1S, 'tau1S');
      positive(wave.tau2S, 'tau2S');
      if (wave.tau1S >= wave.tau2S) throw new RangeError(`a front of ${wave.tau1S} s is not shorter than its tail`);
      return;
    case 'double-exponential':
      positive(wave.factor, 'factor');
      positive(wave.frontS, 'frontS');
      positive(wave.tailS, 'tailS');
      return;
    case 'cubed-exponential':
      positive(wave.factorPerS3, 'factorPerS3');
      positive(wave.tauS, 'tauS');
      return;
    case 'damped-sine':
      positive(wave.factor, 'factor');
      positive(wave.tauS, 'tauS');
      positive(wave.omegaPerS, 'omegaPerS');
      within(wave.omegaPerS * wave.tauS, 0, 1000, 'turns in radians before a sine dies');
  }
}
