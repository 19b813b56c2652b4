import { decayMoments } from './decay-moments.ts';
import { quintics } from './quintics.ts';
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
  readonly weights: readonly Float64Array[];
}

export function modePair(modes: SurgeModes, drive: SurgeDrive, stepS: number): ModePair {
  return { middle: modeStep(modes, drive, 2 * stepS, 0.5), end: modeStep(modes, drive, 2 * stepS, 1) };
}

/** State at a share of a stretch over which the source is one quintic. */
function modeStep({ count, stored, lost }: SurgeModes, drive: SurgeDrive, wholeS: number, share: number): ModeStep {
  const kept = new Float64Array(count);
  const weights = Array.from({ length: 6 }, () => new Float64Array(count));
  const at = share === 1 ? 4 : 2;
  for (let k = 0; k < count; k++) {
    const [a, b, held] = [drive.byCurrent[k]!, drive.bySlope[k]!, stored[k]!];
    if (held === 0) {
      weights[at]![k] = -a / lost[k]!;
      continue;
    }
    const gain = (wholeS * share) / held;
    const x = gain * lost[k]!;
    const moments = decayMoments(x, 6);
    kept[k] = Math.exp(-x);
    for (let j = 0; j < 6; j++) {
      const [value, slope] = answers(quintics[j]!, moments, share);
      // a quintic of slopes is one of slopes by the share of the whole
      const unit = j % 2 === 0 ? 1 : wholeS;
      weights[j]![k] = -gain * unit * (a * value + (b * slope) / wholeS);
    }
  }
  return { kept, weights };
}

/** What a polynomial and its derivative leave at a share: sums of coefficients times moments, the powers drawn out. */
function answers(coefficients: readonly number[], moments: Float64Array, share: number): readonly [number, number] {
  let [value, slope, power] = [0, 0, 1];
  for (let m = 0; m < 6; m++) {
    value += coefficients[m]! * moments[m]! * power;
    if (m < 5) slope += (m + 1) * coefficients[m + 1]! * moments[m]! * power;
    power *= share;
  }
  return [value, slope];
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
