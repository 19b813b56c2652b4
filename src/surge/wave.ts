/**
 * A current that grows and dies away; a voltage wave is the same with volts. It starts at time 0, before that it is 0.
 * `peakA` is the nominal peak: the true one differs by the roundings of the standard's constants (up to 0.13 %).
 */
export type Wave = HeidlerWave | DoubleExponentialWave | CubedExponentialWave | DampedSineWave;

/**
 * i = (peak / k) x / (1 + x) exp(-t / tau2), x = (t / tau1)^n: starts with no slope.
 * F. Heidler, as in IEC 62305-1 annex B (from memory).
 */
export interface HeidlerWave {
  readonly kind: 'heidler';
  readonly peakA: number;
  readonly k: number;
  readonly tau1S: number;
  readonly tau2S: number;
  readonly n: number;
}

/** i = factor peak (1 - exp(-t / front)) exp(-t / tail): starts with its steepest slope. */
export interface DoubleExponentialWave {
  readonly kind: 'double-exponential';
  readonly peakA: number;
  readonly factor: number;
  readonly frontS: number;
  readonly tailS: number;
}

/** i = factor peak t^3 exp(-t / tau). */
export interface CubedExponentialWave {
  readonly kind: 'cubed-exponential';
  readonly peakA: number;
  readonly factorPerS3: number;
  readonly tauS: number;
}

/** i = factor peak exp(-t / tau) sin(omega t): swings below zero after half a turn. */
export interface DampedSineWave {
  readonly kind: 'damped-sine';
  readonly peakA: number;
  readonly factor: number;
  readonly tauS: number;
  readonly omegaPerS: number;
}

/** Current at a time, ampere; 0 before the start. */
export function currentAt(wave: Wave, timeS: number): number {
  if (timeS <= 0) return 0;
  switch (wave.kind) {
    case 'heidler':
      return (wave.peakA / wave.k) * risen(wave, timeS) * Math.exp(-timeS / wave.tau2S);
    case 'double-exponential':
      return -wave.factor * wave.peakA * Math.expm1(-timeS / wave.frontS) * Math.exp(-timeS / wave.tailS);
    case 'cubed-exponential':
      return wave.factorPerS3 * wave.peakA * timeS ** 3 * Math.exp(-timeS / wave.tauS);
    case 'damped-sine':
      return wave.factor * wave.peakA * Math.exp(-timeS / wave.tauS) * Math.sin(wave.omegaPerS * timeS);
  }
}

/** Slope at a time, ampere per second: exact, at time 0 that of just after; 0 before. */
export function slopeAt(wave: Wave, timeS: number): number {
  if (timeS < 0) return 0;
  switch (wave.kind) {
    case 'heidler':
      return heidlerSlope(wave, timeS);
    case 'double-exponential': {
      const { factor, peakA, frontS, tailS } = wave;
      const dying = Math.exp(-timeS / frontS);
      return factor * peakA * Math.exp(-timeS / tailS) * (dying / frontS + Math.expm1(-timeS / frontS) / tailS);
    }
    case 'cubed-exponential': {
      const { factorPerS3, peakA, tauS } = wave;
      return factorPerS3 * peakA * timeS ** 2 * (3 - timeS / tauS) * Math.exp(-timeS / tauS);
    }
    case 'damped-sine': {
      const { factor, peakA, tauS, omegaPerS } = wave;
      const turn = omegaPerS * timeS;
      return factor * peakA * Math.exp(-timeS / tauS) * (omegaPerS * Math.cos(turn) - Math.sin(turn) / tauS);
    }
  }
}

/** The same wave with another nominal peak. */
export function withPeak<W extends Wave>(wave: W, peakA: number): W {
  return { ...wave, peakA };
}

/** x / (1 + x), written so that no power overflows. */
function risen({ tau1S, n }: HeidlerWave, timeS: number): number {
  return 1 / (1 + (tau1S / timeS) ** n);
}

function heidlerSlope(wave: HeidlerWave, timeS: number): number {
  const { peakA, k, tau2S, n } = wave;
  const share = timeS > 0 ? risen(wave, timeS) : 0;
  if (share === 0) return 0;
  return (peakA / k) * share * Math.exp(-timeS / tau2S) * ((n * (1 - share)) / timeS - 1 / tau2S);
}
