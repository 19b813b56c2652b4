import { decayMoments } from './decay-moments.ts';
import { quinticSlopes, quintics } from './quintics.ts';
import type { SurgeDrive } from './surge-drive.ts';
import type { SurgeModes } from './surge-modes.ts';

/**
 * Two equal steps of every mode, exact for a source that is a polynomial of the fifth degree over both: by its values and slopes
 * at the start, in the middle and at the end,
 *
 *     z = kept z(start) + sum of weights[j] times (i0, i0', im, im', i1, i1')
 *
 * in the middle and at the end. A mode that stores nothing follows the source at once.
 */
export interface ModePair {
  readonly middle: ModeStep;
  readonly end: ModeStep;
}

export interface ModeStep {
  readonly kept: Float64Array;
  /** Six of each mode, one after the other. */
  readonly weights: Float64Array;
}

export function modePair(modes: SurgeModes, drive: SurgeDrive, stepS: number): ModePair {
  return { middle: modeStep(modes, drive, 2 * stepS, 0.5), end: modeStep(modes, drive, 2 * stepS, 1) };
}

/** State at a share of a stretch over which the source is one quintic. */
function modeStep({ count, stored, lost }: SurgeModes, drive: SurgeDrive, wholeS: number, share: number): ModeStep {
  const room = new Float64Array(7 * count);
  const [kept, weights] = [room.subarray(0, count), room.subarray(count)];
  const moments = new Float64Array(6);
  const at = share === 1 ? 4 : 2;
  for (let k = 0; k < count; k++) {
    const [a, b, held] = [drive.byCurrent[k]!, drive.bySlope[k]!, stored[k]!];
    if (held === 0) {
      weights[6 * k + at] = -a / lost[k]!;
      continue;
    }
    const gain = (wholeS * share) / held;
    const x = gain * lost[k]!;
    decayMoments(x, moments);
    for (let m = 1, power = share; m < 6; m++, power *= share) moments[m] = moments[m]! * power;
    kept[k] = Math.exp(-x);
    for (let j = 0; j < 6; j++) {
      const push = a * answer(quintics, j, moments) + (b * answer(quinticSlopes, j, moments)) / wholeS;
      // a quintic of slopes is one of slopes by the share of the whole
      weights[6 * k + j] = -gain * (j % 2 === 0 ? 1 : wholeS) * push;
    }
  }
  return { kept, weights };
}

/** What a polynomial leaves: its coefficients times the moments. */
function answer(polynomials: Float64Array, j: number, moments: Float64Array): number {
  let sum = 0;
  for (let m = 0; m < 6; m++) sum += polynomials[6 * j + m]! * moments[m]!;
  return sum;
}

/** Pairs by the length of a step, each length worked out once. */
export function modePairs(modes: SurgeModes, drive: SurgeDrive): (stepS: number) => ModePair {
  const known = new Map<number, ModePair>();
  return (stepS) => {
    const found = known.get(stepS);
    if (found !== undefined) return found;
    const made = modePair(modes, drive, stepS);
    known.set(stepS, made);
    return made;
  };
}
