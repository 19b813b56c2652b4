import { type ModeStep, modePairs } from './mode-pair.ts';
import type { SurgeDrive } from './surge-drive.ts';
import type { SurgeModes } from './surge-modes.ts';
import type { SampledWave } from './surge-steps.ts';

/**
 * Modes time by time from rest, two equal steps at once, exact for a source that is a polynomial of the fifth degree over both:
 * nothing rings, and no step is too long for a fast mode.
 */
export function surgeStates(modes: SurgeModes, drive: SurgeDrive, wave: SampledWave): Float64Array {
  const { count } = modes;
  const { currentA, slopeAPerS } = wave;
  const z = new Float64Array(currentA.length * count);
  const pairOf = modePairs(modes, drive);
  const source = new Float64Array(6);
  for (let t = 0; t + 2 < currentA.length; t += 2) {
    for (let n = 0; n < 3; n++) {
      source[2 * n] = currentA[t + n]!;
      source[2 * n + 1] = slopeAPerS[t + n]!;
    }
    const { middle, end } = pairOf(wave.stepS[t + 1]!);
    advance(z, t * count, (t + 1) * count, middle, source);
    advance(z, t * count, (t + 2) * count, end, source);
  }
  return z;
}

/** A small loop in a function of its own: the engine compiles it once and for all. */
function advance(z: Float64Array, from: number, to: number, { kept, weights }: ModeStep, source: Float64Array): void {
  const [a, b, c, d, e, f] = [source[0]!, source[1]!, source[2]!, source[3]!, source[4]!, source[5]!];
  const [wa, wb, wc, wd, we, wf] = [weights[0]!, weights[1]!, weights[2]!, weights[3]!, weights[4]!, weights[5]!];
  for (let k = 0; k < kept.length; k++) {
    const push = wa[k]! * a + wb[k]! * b + wc[k]! * c + wd[k]! * d + we[k]! * e + wf[k]! * f;
    z[to + k] = kept[k]! * z[from + k]! + push;
  }
}
