import type { ModePair, ModeStep } from './mode-pair.ts';
import type { SampledWave } from './surge-steps.ts';

/**
 * Modes time by time from rest, two equal steps at once, exact for a source that is a polynomial of the fifth degree over both:
 * nothing rings, and no step is too long for a fast mode.
 */
export function surgeStates(count: number, pairOf: (stepS: number) => ModePair, wave: SampledWave): Float64Array {
  const { currentA, slopeAPerS } = wave;
  const z = new Float64Array(currentA.length * count);
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
  for (let k = 0; k < kept.length; k++) {
    const w = 6 * k;
    const values = weights[w]! * a + weights[w + 2]! * c + weights[w + 4]! * e;
    const slopes = weights[w + 1]! * b + weights[w + 3]! * d + weights[w + 5]! * f;
    z[to + k] = kept[k]! * z[from + k]! + values + slopes;
  }
}
