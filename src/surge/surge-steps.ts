import { currentAt, slopeAt, type Wave } from './wave.ts';
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
  // a Heidler front rises as the tenth power: it is as short as a tenth of its time constant
  const leastS = fastS / (shortest * fineness);
  const [timesS, stepS] = [[0], [0]];
  for (let time = 0; untilS - time > 1e-9 * untilS; ) {
    const mostS = ((time - frontTimes * fastS) * growth) / fineness;
    const grownS = mostS > leastS ? leastS * 2 ** Math.floor(Math.log2(mostS / leastS)) : leastS;
    const step = Math.min(grownS, (untilS - time) / blockSteps);
    for (let n = 1; n <= blockSteps; n++) {
      timesS.push(time + n * step);
      stepS.push(step);
    }
    time = timesS.at(-1)!;
  }
  return { timesS: Float64Array.from(timesS), stepS: Float64Array.from(stepS) };
}

const shortest = 100;
const frontTimes = 3;
const growth = 0.05;

/** A wave at the times of a run and in the middle of the step before each. */
export interface SampledWave extends SurgeSteps {
  readonly currentA: Float64Array;
  readonly slopeAPerS: Float64Array;
  readonly middleCurrentA: Float64Array;
  readonly middleSlopeAPerS: Float64Array;
}

export function sampledWave(wave: Wave, { timesS, stepS }: SurgeSteps): SampledWave {
  const middle = timesS.map((time, t) => time - stepS[t]! / 2);
  return {
    timesS,
    stepS,
    currentA: timesS.map((time) => currentAt(wave, time)),
    slopeAPerS: timesS.map((time) => slopeAt(wave, time)),
    middleCurrentA: middle.map((time) => currentAt(wave, time)),
    middleSlopeAPerS: middle.map((time) => slopeAt(wave, time)),
  };
}

/** The same in steps twice as long, without looking at the wave again. */
export function inTwiceTheSteps(wave: SampledWave): SampledWave {
  const count = (wave.timesS.length + 1) >> 1;
  const ends = (figures: Float64Array) => Float64Array.from({ length: count }, (_, t) => figures[2 * t]!);
  const middles = (figures: Float64Array) =>
    Float64Array.from({ length: count }, (_, t) => figures[Math.max(0, 2 * t - 1)]!);
  return {
    timesS: ends(wave.timesS),
    stepS: ends(wave.stepS).map((step) => 2 * step),
    currentA: ends(wave.currentA),
    slopeAPerS: ends(wave.slopeAPerS),
    middleCurrentA: middles(wave.currentA),
    middleSlopeAPerS: middles(wave.slopeAPerS),
  };
}
