import { checkWave } from './check-wave.ts';
import { currentAt, slopeAt, type Wave } from './wave.ts';
import { waveIntegrals } from './wave-integrals.ts';
import { waveTimes } from './wave-times.ts';

/** How a front is read off: between 10 and 90 % of the peak (currents), or between 30 and 90 % (voltages). */
export type FrontReading = 'current' | 'voltage';

/** The figures that a wave is known by. A voltage wave has volts in the place of ampere. */
export interface WaveFigures {
  readonly peakA: number;
  readonly peakAtS: number;
  /** T1, the front's virtual duration. */
  readonly frontS: number;
  /** Where the front's straight line meets zero. */
  readonly originS: number;
  /** T2, from the virtual origin to half the peak on the tail. */
  readonly tailS: number;
  readonly steepestAPerS: number;
  readonly steepestAtS: number;
  readonly chargeC: number;
  readonly specificEnergyJPerOhm: number;
}

const frontReadings = {
  current: { lowShare: 0.1, lengthening: 1.25 },
  voltage: { lowShare: 0.3, lengthening: 1.67 },
} as const;

/** The search for a top starts at 1/400 of the fast time and goes on in steps of 4 %. */
const samplesPerFast = 400;
const sampleRatio = 1.04;

/**
 * Measures a wave from its own formula. Front and tail as in IEC 60060-1 (from memory): T1 = 1.25 (t90 - t10) for currents,
 * 1.67 (t90 - t30) for voltages, T2 from the virtual origin to half value. Times to 1e-12 of themselves (the steepest point,
 * which is flat, to 1e-7), values to 1e-10. RangeError for a wave that cannot be.
 */
export function waveFigures(wave: Wave, reading: FrontReading = 'current'): WaveFigures {
  checkWave(wave);
  const peakAtS = peakTime(wave);
  const peakA = currentAt(wave, peakAtS);
  const reach = (share: number, low: number, high: number) =>
    crossing((t) => currentAt(wave, t) - share * peakA, low, high);
  const { lowShare, lengthening } = frontReadings[reading];
  const lowAt = reach(lowShare, 0, peakAtS);
  const frontS = lengthening * (reach(0.9, 0, peakAtS) - lowAt);
  const originS = lowAt - lowShare * frontS;
  const tailS = reach(0.5, peakAtS, halfEnd(wave, peakAtS, peakA)) - originS;
  const steepestAtS = steepestTime(wave, peakAtS);
  return {
    peakA,
    peakAtS,
    frontS,
    originS,
    tailS,
    steepestAPerS: slopeAt(wave, steepestAtS),
    steepestAtS,
    ...waveIntegrals(wave),
  };
}

/** The first moment at which it stops growing: all our waves have one top above their start. */
function peakTime(wave: Wave): number {
  let [before, at] = [0, waveTimes(wave).fastS / samplesPerFast];
  // a wave that starts from no slope grows before it can stop growing
  while (currentAt(wave, at) === 0 || slopeAt(wave, at) > 0) [before, at] = [at, at * sampleRatio];
  return crossing((t) => slopeAt(wave, t), before, at);
}

/** Some time after the peak at which it is below half. */
function halfEnd(wave: Wave, peakAtS: number, peakA: number): number {
  let at = peakAtS * sampleRatio;
  while (currentAt(wave, at) > peakA / 2) at *= sampleRatio;
  return at;
}

/** Of the times up to the peak the one of the greatest slope; 0 where it only falls from the start. */
function steepestTime(wave: Wave, peakAtS: number): number {
  const start = peakAtS / 1e4;
  let best = 0;
  for (let t = start; t < peakAtS; t *= sampleRatio) if (slopeAt(wave, t) > slopeAt(wave, best)) best = t;
  return best === 0 ? 0 : top((t) => slopeAt(wave, t), best / sampleRatio, best * sampleRatio);
}

/** Where f changes sign between low and high, by halving down to the last bit. */
function crossing(f: (t: number) => number, low: number, high: number): number {
  const rising = f(high) > 0;
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (f(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** The top of f between low and high, by golden sections. */
function top(f: (t: number) => number, low: number, high: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  while (high - low > 1e-9 * high) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (f(a) < f(b)) low = a;
    else high = b;
  }
  return (low + high) / 2;
}
