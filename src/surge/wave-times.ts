import type { Wave } from './wave.ts';

/** Times between which everything that matters of a wave happens, seconds. */
export interface WaveTimes {
  /** The shortest time in which it changes much. */
  readonly fastS: number;
  /** The time constant of its tail. */
  readonly slowS: number;
  /** When less than exp(-40) of it, one part in 1e17, is left. */
  readonly endS: number;
  /** The longest stretch over which it does not swing back. */
  readonly halfTurnS: number;
}

/** The fast and slow times of a wave from its constants. */
export function waveTimes(wave: Wave): WaveTimes {
  const [fastS, slowS] = constants(wave);
  const halfTurnS = wave.kind === 'damped-sine' ? Math.PI / wave.omegaPerS : Infinity;
  return { fastS, slowS, endS: 40 * (slowS + fastS), halfTurnS };
}

function constants(wave: Wave): readonly [fastS: number, slowS: number] {
  switch (wave.kind) {
    case 'heidler':
      return [wave.tau1S, wave.tau2S];
    case 'double-exponential':
      return [Math.min(wave.frontS, wave.tailS), wave.tailS];
    case 'cubed-exponential':
      // t^3 lifts the tail: by 60 time constants it is down to exp(-47) of the peak, hence twice
      return [wave.tauS, 2 * wave.tauS];
    case 'damped-sine':
      return [Math.min(1 / wave.omegaPerS, wave.tauS), wave.tauS];
  }
}
