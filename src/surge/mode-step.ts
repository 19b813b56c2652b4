import type { SurgeModes } from './surge-modes.ts';

/**
 * Weights of one exact step of every mode, for a drive g that is a parabola over it (by its start, middle and end):
 *
 *     z(end) = kept z(start) + start g0 + middle gm + end g1.
 *
 * A mode that stores nothing has z = g / lost at once.
 */
export interface ModeStep {
  readonly kept: Float64Array;
  readonly start: Float64Array;
  readonly middle: Float64Array;
  readonly end: Float64Array;
}

export function modeStep({ count, stored, lost }: SurgeModes, stepS: number): ModeStep {
  const [kept, start, middle, end] = Array.from({ length: 4 }, () => new Float64Array(count));
  const step = { kept: kept!, start: start!, middle: middle!, end: end! };
  for (let k = 0; k < count; k++) {
    if (stored[k] === 0) {
      step.end[k] = 1 / lost[k]!;
      continue;
    }
    const gain = stepS / stored[k]!;
    const x = gain * lost[k]!;
    const moments = decayMoments(x, 3);
    const [zero, one, two] = [moments[0]!, moments[1]!, moments[2]!];
    step.kept[k] = Math.exp(-x);
    step.start[k] = gain * (zero - 3 * one + 2 * two);
    step.middle[k] = gain * (4 * one - 4 * two);
    step.end[k] = gain * (2 * two - one);
  }
  return step;
}

/** Weights by the length of a step, each length worked out once. */
export function modeSteps(modes: SurgeModes): (stepS: number) => ModeStep {
  const known = new Map<number, ModeStep>();
  return (stepS) => {
    const found = known.get(stepS);
    if (found !== undefined) return found;
    const made = modeStep(modes, stepS);
    known.set(stepS, made);
    return made;
  };
}

/**
 * Integrals of exp(-x (1 - u)) u^k over u from 0 to 1, k = 0, 1, ... (`count` of them); by a series where x is small, since the
 * closed forms lose digits there.
 */
export function decayMoments(x: number, count: number): Float64Array {
  const moments = new Float64Array(count);
  if (x < 1) {
    for (let k = 0; k < count; k++) moments[k] = series(x, k);
    return moments;
  }
  moments[0] = -Math.expm1(-x) / x;
  for (let k = 1; k < count; k++) moments[k] = (1 - k * moments[k - 1]!) / x;
  return moments;
}

/** Sum of k! (-x)^n / (n + k + 1)!, from the integral by parts. */
function series(x: number, k: number): number {
  let term = 1 / (k + 1);
  let sum = term;
  for (let n = 1; Math.abs(term) > 1e-17 && n < 40; n++) {
    term *= -x / (n + k + 1);
    sum += term;
  }
  return sum;
}
