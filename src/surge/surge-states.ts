import { modeSteps } from './mode-step.ts';
import type { SurgeDrive } from './surge-drive.ts';
import type { SurgeModes } from './surge-modes.ts';
import type { SampledWave } from './surge-steps.ts';

/** Modes and their slopes, time by time. */
export interface SurgeStates {
  readonly z: Float64Array;
  readonly slope: Float64Array;
}

/** From rest, each step exact for a source that is a parabola over it: nothing rings, and no step is too long for a fast mode. */
export function surgeStates(modes: SurgeModes, drive: SurgeDrive, wave: SampledWave): SurgeStates {
  const { count } = modes;
  const times = wave.timesS.length;
  const states = { z: new Float64Array(times * count), slope: new Float64Array(times * count) };
  const stepOf = modeSteps(modes);
  const atRest = new Float64Array(count);
  setSlopes(modes, drive, wave, 0, states);
  for (let t = 1; t < times; t++) {
    const before = t === 1 ? atRest : states.z.subarray((t - 1) * count, t * count);
    const { kept, start, middle, end } = stepOf(wave.stepS[t]!);
    const [i0, im, i1] = [wave.currentA[t - 1]!, wave.middleCurrentA[t]!, wave.currentA[t]!];
    const [s0, sm, s1] = [wave.slopeAPerS[t - 1]!, wave.middleSlopeAPerS[t]!, wave.slopeAPerS[t]!];
    const row = t * count;
    for (let k = 0; k < count; k++) {
      const [from, by, to] = [start[k]!, middle[k]!, end[k]!];
      const current = from * i0 + by * im + to * i1;
      const slope = from * s0 + by * sm + to * s1;
      states.z[row + k] = kept[k]! * before[k]! - drive.byCurrent[k]! * current - drive.bySlope[k]! * slope;
    }
    setSlopes(modes, drive, wave, t, states);
  }
  return states;
}

/** From the modes' own equation; a loop of resistances follows its source. */
function setSlopes(
  { count, stored, lost }: SurgeModes,
  { byCurrent, bySlope }: SurgeDrive,
  wave: SampledWave,
  t: number,
  { z, slope }: SurgeStates,
): void {
  const [current, rise] = [wave.currentA[t]!, wave.slopeAPerS[t]!];
  const row = t * count;
  for (let k = 0; k < count; k++) {
    const [a, b] = [byCurrent[k]!, bySlope[k]!];
    if (stored[k] === 0) {
      z[row + k] = -(a * current + b * rise) / lost[k]!;
      slope[row + k] = (-a * rise) / lost[k]!;
    } else slope[row + k] = (-a * current - b * rise - lost[k]! * z[row + k]!) / stored[k]!;
  }
}
