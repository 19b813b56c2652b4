import { decayMoments } from './decay-moments.ts';
import { radauParabolas, radauPoints } from './radau.ts';
import type { SurgeModes } from './surge-modes.ts';

/** What a step does to every mode at the three points of `radauPoints`, under a drive that is a parabola through them. */
export interface CutStep {
  /** Share of the state at the start that is left at a point: kept[s][k]. */
  readonly kept: readonly Float64Array[];
  /** Answer at point s to a drive that is 1 at point p alone: answer[3 s + p][k]. */
  readonly answer: readonly Float64Array[];
}

export function cutStep({ count, stored, lost }: SurgeModes, stepS: number): CutStep {
  const kept = radauPoints.map(() => new Float64Array(count));
  const answer = Array.from({ length: 9 }, () => new Float64Array(count));
  const moments = new Float64Array(3);
  for (let k = 0; k < count; k++) {
    if (stored[k] === 0) {
      for (let s = 0; s < 3; s++) answer[4 * s]![k] = 1 / lost[k]!;
      continue;
    }
    const gain = stepS / stored[k]!;
    radauPoints.forEach((point, s) => {
      const x = point * gain * lost[k]!;
      decayMoments(x, moments);
      const [zero, one, two] = [moments[0]!, moments[1]!, moments[2]!];
      kept[s]![k] = Math.exp(-x);
      radauParabolas.forEach(([c0, c1, c2], p) => {
        answer[3 * s + p]![k] = gain * point * (c0 * zero + c1 * point * one + c2 * point * point * two);
      });
    });
  }
  return { kept, answer };
}

/** By the length of a step, each length worked out once: for all cuts of the same modes. */
export function cutSteps(modes: SurgeModes): (stepS: number) => CutStep {
  const known = new Map<number, CutStep>();
  return (stepS) => {
    const found = known.get(stepS);
    if (found !== undefined) return found;
    const made = cutStep(modes, stepS);
    known.set(stepS, made);
    return made;
  };
}
