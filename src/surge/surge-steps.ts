import { currentAt, slopeAt, type Wave } from './wave.ts';
import { waveTimes } from './wave-times.ts';

/** Times from 0 on, in pairs of equal steps: short while the front lasts, then growing with the time. */
export function surgeTimes(wave: Wave, untilS: number, fineness = 1): Float64Array {
  const { fastS } = waveTimes(wave);
  const times = [0];
  for (let time = 0; time < untilS; ) {
    // a Heidler front rises as the tenth power: it is as short as a tenth of its time constant
    const step = Math.min(
      Math.max(fastS / (shortest * fineness), (time - 3 * fastS) * (growth / fineness)),
      (untilS - time) / 2,
    );
    times.push(time + step, time + 2 * step);
    time = times.at(-1)!;
    if (untilS - time < 1e-9 * untilS) break;
  }
  return Float64Array.from(times);
}

const shortest = 100;
const growth = 0.02;

/** A wave at the times of a run and in the middle of each step. */
export interface SampledWave {
  readonly timesS: Float64Array;
  readonly currentA: Float64Array;
  readonly slopeAPerS: Float64Array;
  readonly middleCurrentA: Float64Array;
  readonly middleSlopeAPerS: Float64Array;
}

export function sampledWave(wave: Wave, timesS: Float64Array): SampledWave {
  const middle = timesS.map((time, i) => (time + (timesS[i + 1] ?? time)) / 2);
  return {
    timesS,
    currentA: timesS.map((time) => currentAt(wave, time)),
    slopeAPerS: timesS.map((time) => slopeAt(wave, time)),
    middleCurrentA: middle.map((time) => currentAt(wave, time)),
    middleSlopeAPerS: middle.map((time) => slopeAt(wave, time)),
  };
}
