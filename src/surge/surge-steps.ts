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
  return { timesS: new Float64Array(timesS), stepS: new Float64Array(stepS) };
}

const shortest = 80;
const frontTimes = 3;
const growth = 0.08;

/** A wave at the times of a run and in the middle of the step before each. */
export interface SampledWave extends SurgeSteps {
  readonly currentA: Float64Array;
  readonly slopeAPerS: Float64Array;
  readonly middleCurrentA: Float64Array;
  readonly middleSlopeAPerS: Float64Array;
}

export function sampledWave(wave: Wave, { timesS, stepS }: SurgeSteps): SampledWave {
  const count = timesS.length;
  const [currentA, slopeAPerS] = [new Float64Array(count), new Float64Array(count)];
  const [middleCurrentA, middleSlopeAPerS] = [new Float64Array(count), new Float64Array(count)];
  for (let t = 0; t < count; t++) {
    const end = waveAt(wave, timesS[t]!);
    currentA[t] = end.currentA;
    slopeAPerS[t] = end.slopeAPerS;
    const middle = stepS[t] === 0 ? end : waveAt(wave, timesS[t]! - stepS[t]! / 2);
    middleCurrentA[t] = middle.currentA;
    middleSlopeAPerS[t] = middle.slopeAPerS;
  }
  return { timesS, stepS, currentA, slopeAPerS, middleCurrentA, middleSlopeAPerS };
}

/** The same in steps twice as long, without looking at the wave again. */
export function inTwiceTheSteps(wave: SampledWave): SampledWave {
  const stepS = everySecond(wave.stepS, 0);
  for (let t = 0; t < stepS.length; t++) stepS[t] = 2 * stepS[t]!;
  return {
    timesS: everySecond(wave.timesS, 0),
    stepS,
    currentA: everySecond(wave.currentA, 0),
    slopeAPerS: everySecond(wave.slopeAPerS, 0),
    middleCurrentA: everySecond(wave.currentA, 1),
    middleSlopeAPerS: everySecond(wave.slopeAPerS, 1),
  };
}

/** Those at even times, or the ones before them. */
function everySecond(figures: Float64Array, before: number): Float64Array {
  const kept = new Float64Array((figures.length + 1) >> 1);
  for (let t = 0; t < kept.length; t++) kept[t] = figures[Math.max(0, 2 * t - before)]!;
  return kept;
}
