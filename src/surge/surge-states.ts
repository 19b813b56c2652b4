import { modeSteps } from './mode-step.ts';
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
    const step = stepOf(wave.stepS[t]!);
    const row = t * count;
    keep(z, row, step.kept);
    push(z, row, step.start, drive, wave.currentA[t - 1]!, wave.slopeAPerS[t - 1]!);
    push(z, row, step.middle, drive, wave.middleCurrentA[t]!, wave.middleSlopeAPerS[t]!);
    push(z, row, step.end, drive, wave.currentA[t]!, wave.slopeAPerS[t]!);
  }
  return z;
}

// Small loops in functions of their own: the engine compiles those once and for all.

function keep(z: Float64Array, row: number, kept: Float64Array): void {
  const before = row - kept.length;
  for (let k = 0; k < kept.length; k++) z[row + k] = kept[k]! * z[before + k]!;
}

function push(
  z: Float64Array,
  row: number,
  gain: Float64Array,
  { byCurrent, bySlope }: SurgeDrive,
  current: number,
  rise: number,
): void {
  for (let k = 0; k < gain.length; k++)
    z[row + k] = z[row + k]! - gain[k]! * (byCurrent[k]! * current + bySlope[k]! * rise);
}
