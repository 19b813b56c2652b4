import { type ModeStep, modeSteps } from './mode-step.ts';
import type { SurgeDrive } from './surge-drive.ts';
import type { SurgeModes } from './surge-modes.ts';
import type { SampledWave } from './surge-steps.ts';

/** Modes time by time from rest, each step exact for a source that is a parabola over it: nothing rings, and no step is too long for a fast mode. */
export function surgeStates(modes: SurgeModes, drive: SurgeDrive, wave: SampledWave): Float64Array {
  const { count } = modes;
  const times = wave.timesS.length;
  const z = new Float64Array(times * count);
  const stepOf = modeSteps(modes);
  for (let t = 1; t < times; t++) {
    advance(z, t * count, stepOf(wave.stepS[t]!), drive, [
      wave.currentA[t - 1]!,
      wave.middleCurrentA[t]!,
      wave.currentA[t]!,
      wave.slopeAPerS[t - 1]!,
      wave.middleSlopeAPerS[t]!,
      wave.slopeAPerS[t]!,
    ]);
  }
  return z;
}

type Source = readonly [i0: number, im: number, i1: number, s0: number, sm: number, s1: number];

/** A small loop in a function of its own: the engine compiles it once and for all. */
function advance(
  z: Float64Array,
  row: number,
  { kept, start, middle, end }: ModeStep,
  { byCurrent, bySlope }: SurgeDrive,
  [i0, im, i1, s0, sm, s1]: Source,
): void {
  const count = kept.length;
  for (let k = 0; k < count; k++) {
    const [a, b] = [byCurrent[k]!, bySlope[k]!];
    const push = start[k]! * (a * i0 + b * s0) + middle[k]! * (a * im + b * sm) + end[k]! * (a * i1 + b * s1);
    z[row + k] = kept[k]! * z[row - count + k]! - push;
  }
}
