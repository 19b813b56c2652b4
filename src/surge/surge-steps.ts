import type { Wave } from './wave.ts';
import { waveAt } from './wave-at.ts';
import { waveTimes } from './wave-times.ts';

/** Steps in blocks of equal ones; lengths differ by factors of two, but for the last block: few lengths serve them all. */
export interface SurgeSteps {
  readonly timesS: Float64Array;
  /** Length of the step that ends at each time; 0 at the start. */
  readonly stepS: Float64Array;
}

/** Steps of one block. */
export const blockSteps = 4;

/** From 0 to a time: short while the front lasts, then growing with the time. */
export function surgeSteps(wave: Wave, untilS: number, fineness = 1): SurgeSteps {
  const { fastS } = waveTimes(wave);
  // a wave that swings is never to be passed over
  const swingS = wave.kind === 'damped-sine' ? swingShare / wave.omegaPerS : Infinity;
  const leastS = fastS / (frontSteps(wave) * fineness);
  const [timesS, stepS] = [[0], [0]];
  for (let time = 0; untilS - time > 1e-9 * untilS; ) {
    const mostS = Math.min(swingS, (time - frontTimes * fastS) * growth) / fineness;
    const grownS = mostS > leastS ? leastS * 2 ** Math.floor(Math.log2(mostS / leastS)) : leastS;
    const step = Math.min(grownS, (untilS - time) / blockSteps);
    for (let n = 1; n <= blockSteps; n++) {
      timesS.push(time + n * step);
      stepS.push(step);
    }
    time = timesS.at(-1)!;
  }
  return { timesS: new Float64Array(timesS), stepS: new Float64Array(stepS) };
}

/**
 * Steps in the fast time of a wave: so many that peaks are found to a nanosecond and not only to a millionth of their height. A
 * Heidler front rises by a power: it is the shorter the higher that is.
 */
function frontSteps(wave: Wave): number {
  switch (wave.kind) {
    case 'heidler':
      return 4.8 * wave.n;
    case 'double-exponential':
      return 40;
    case 'cubed-exponential':
    case 'damped-sine':
      return 20;
  }
}

const frontTimes = 3;
const growth = 0.08;
/** Of a radian. */
const swingShare = 0.15;

/** A wave at the times of a run. */
export interface SampledWave extends SurgeSteps {
  readonly currentA: Float64Array;
  readonly slopeAPerS: Float64Array;
}

export function sampledWave(wave: Wave, { timesS, stepS }: SurgeSteps): SampledWave {
  const [currentA, slopeAPerS] = [new Float64Array(timesS.length), new Float64Array(timesS.length)];
  for (let t = 0; t < timesS.length; t++) {
    const at = waveAt(wave, timesS[t]!);
    currentA[t] = at.currentA;
    slopeAPerS[t] = at.slopeAPerS;
  }
  return { timesS, stepS, currentA, slopeAPerS };
}

/** The same in steps twice as long, without looking at the wave again. */
export function inTwiceTheSteps(wave: SampledWave): SampledWave {
  const stepS = everySecond(wave.stepS);
  for (let t = 0; t < stepS.length; t++) stepS[t] = 2 * stepS[t]!;
  return {
    timesS: everySecond(wave.timesS),
    stepS,
    currentA: everySecond(wave.currentA),
    slopeAPerS: everySecond(wave.slopeAPerS),
  };
}

function everySecond(figures: Float64Array): Float64Array {
  const kept = new Float64Array((figures.length + 1) >> 1);
  for (let t = 0; t < kept.length; t++) kept[t] = figures[2 * t]!;
  return kept;
}
