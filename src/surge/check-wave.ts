import { positive, within } from './positive.ts';
import type { Wave } from './wave.ts';

/**
 * Refuses (RangeError) a wave that cannot be: a peak, a factor or a time constant that is not above zero and finite, a front
 * slower than the tail, a Heidler exponent below 2 (it would not start without slope) or above 100.
 */
export function checkWave(wave: Wave): void {
  positive(wave.peakA, 'peakA');
  switch (wave.kind) {
    case 'heidler':
      positive(wave.k, 'k');
      within(wave.n, 2, 100, 'n');
      checkTimes(wave.tau1S, wave.tau2S);
      return;
    case 'double-exponential':
      positive(wave.factor, 'factor');
      checkTimes(wave.frontS, wave.tailS);
      return;
    case 'cubed-exponential':
      positive(wave.factorPerS3, 'factorPerS3');
      positive(wave.tauS, 'tauS');
      return;
    case 'damped-sine':
      positive(wave.factor, 'factor');
      positive(wave.tauS, 'tauS');
      positive(wave.omegaPerS, 'omegaPerS');
  }
}

function checkTimes(frontS: number, tailS: number): void {
  positive(frontS, 'time constant of the front');
  positive(tailS, 'time constant of the tail');
  if (frontS >= tailS) throw new RangeError(`a front of ${frontS} s is not shorter than its tail of ${tailS} s`);
}
