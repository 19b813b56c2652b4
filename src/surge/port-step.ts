import { decayMoments } from './decay-moments.ts';
import { radauPoints } from './radau.ts';
import type { SurgeModes } from './surge-modes.ts';

/** Where an input of a step is known: at its start and at its Radau points. */
export const stepPoints = [0, ...radauPoints] as const;

/** Row p: coefficients (1, u, u^2, u^3) of the cubic that is 1 at point p of `stepPoints` and 0 at the three others. */
const cubics: readonly (readonly number[])[] = stepPoints.map((own) =>
  stepPoints
    .filter((point) => point !== own)
    .reduce<readonly number[]>(
      (product, root) => {
        const scale = 1 / (own - root);
        return [0, 1, 2, 3].map((power) => ((product[power - 1] ?? 0) - root * product[power]!) * scale);
      },
      [1, 0, 0, 0],
    ),
);

/** Value at a share of the step of the cubic through four values, at `stepPoints`. */
export function cubicAt(values: ArrayLike<number>, share: number): number {
  return cubics.reduce(
    (sum, coefficients, p) => sum + values[p]! * coefficients.reduceRight((value, c) => value * share + c, 0),
    0,
  );
}

/** slopes[p][q]: slope at point p, by the share of the step, of the cubic that is 1 at point q. */
export const cubicSlopes: readonly (readonly number[])[] = stepPoints.map((share) =>
  cubics.map(([, c1, c2, c3]) => c1! + share * (2 * c2! + share * 3 * c3!)),
);

/** What a step does to every mode at its three Radau points. */
export interface PortStep {
  readonly kept: readonly Float64Array[];
  /** Answer at Radau point s to a drive that is 1 at point p of `stepPoints` alone, a cubic through all: answer[4 s + p][k]. */
  readonly answer: readonly Float64Array[];
}

export function portStep({ count, stored, lost }: SurgeModes, stepS: number): PortStep {
  const kept = radauPoints.map(() => new Float64Array(count));
  const answer = Array.from({ length: 12 }, () => new Float64Array(count));
  const moments = new Float64Array(4);
  for (let k = 0; k < count; k++) {
    if (stored[k] === 0) {
      for (let s = 0; s < 3; s++) answer[5 * s + 1]![k] = 1 / lost[k]!;
      continue;
    }
    const gain = stepS / stored[k]!;
    radauPoints.forEach((point, s) => {
      const x = point * gain * lost[k]!;
      decayMoments(x, moments);
      kept[s]![k] = Math.exp(-x);
      cubics.forEach((coefficients, p) => {
        let [sum, power] = [0, gain * point];
        for (let m = 0; m < 4; m++) {
          sum += coefficients[m]! * moments[m]! * power;
          power *= point;
        }
        answer[4 * s + p]![k] = sum;
      });
    });
  }
  return { kept, answer };
}

/** By the length of a step, each length worked out once. */
export function portSteps(modes: SurgeModes): (stepS: number) => PortStep {
  const known = new Map<number, PortStep>();
  return (stepS) => {
    const found = known.get(stepS);
    if (found !== undefined) return found;
    const made = portStep(modes, stepS);
    known.set(stepS, made);
    return made;
  };
}
