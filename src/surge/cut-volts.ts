import { factorCholesky, factorLu, solveFactored } from '../math/dense.ts';
import type { CutStep } from './cut-step.ts';
import type { SurgeModes } from './surge-modes.ts';
import type { SurgeCourse } from './surge-run.ts';

/**
 * Volts over cuts at the three points of a step (point by point, cut by cut) that keep all their currents at zero there: from the
 * change that the cuts have made so far, and from what would flow at the points with no cut. `byMode`: what each mode drives
 * through each cut, none following from the others.
 */
export function cutSolver(
  byMode: readonly Float64Array[],
  modes: SurgeModes,
  stepOf: (stepS: number) => CutStep,
): (stepS: number, change: Float64Array, uncutA: Float64Array) => Float64Array {
  const inverses = new Map<number, Float64Array>();
  const size = 3 * byMode.length;
  return (stepS, change, uncutA) => {
    const { kept, answer } = stepOf(stepS);
    const inverse = inverses.get(stepS) ?? inverted(byMode, answer, modes.count);
    inverses.set(stepS, inverse);
    const flowing = uncutA.slice();
    byMode.forEach((weights, c) => {
      let [first, second, third] = [0, 0, 0];
      const [a, b, d] = kept as [Float64Array, Float64Array, Float64Array];
      for (let k = 0; k < change.length; k++) {
        const part = weights[k]! * change[k]!;
        first += part * a[k]!;
        second += part * b[k]!;
        third += part * d[k]!;
      }
      [first, second, third].forEach((sum, s) => {
        flowing[s * byMode.length + c] = flowing[s * byMode.length + c]! + sum;
      });
    });
    const volts = new Float64Array(size);
    for (let i = 0; i < size; i++)
      for (let j = 0; j < size; j++) volts[i] = volts[i]! + inverse[i * size + j]! * flowing[j]!;
    return volts;
  };
}

/** Of the matrix that says what 1 V over a cut, by the parabola of a point, takes from each current at each point. */
function inverted(byMode: readonly Float64Array[], answer: readonly Float64Array[], count: number): Float64Array {
  const cuts = byMode.length;
  const size = 3 * cuts;
  const matrix = new Float64Array(size * size);
  byMode.forEach((own, c) => {
    byMode.forEach((other, d) => {
      answer.forEach((gain, sp) => {
        let sum = 0;
        for (let k = 0; k < count; k++) sum += own[k]! * other[k]! * gain[k]!;
        matrix[(Math.floor(sp / 3) * cuts + c) * size + (sp % 3) * cuts + d] = sum;
      });
    });
  });
  return solution(factorLu(matrix, size), size);
}

function solution(factor: ReturnType<typeof factorLu>, size: number): Float64Array {
  if (!factor.ok) throw new Error('cuts of which one follows from the others');
  const unit = new Float64Array(size * size);
  for (let i = 0; i < size; i++) unit[i * (size + 1)] = 1;
  return solveFactored(factor, unit, size).solution;
}

/** A loop of resistances counts as one of this time constant, seconds: nothing of a stroke is as fast. */
const quickS = 1e-12;

/**
 * Volts over cuts at one time, from the modes alone: those that keep the slopes of all their currents at zero,
 * sum g g' / stored u = sum g (f - lost z) / stored + own di/dt, f the drive of the source and `own` its current's share by the tree.
 */
export function voltSolver(
  byMode: readonly Float64Array[],
  own: readonly number[],
  { modes, drive, wave }: SurgeCourse,
): (t: number, z: Float64Array) => Float64Array {
  const { count, stored, lost } = modes;
  const cuts = byMode.length;
  const ease = stored.map((held, k) => 1 / Math.max(held, quickS * lost[k]!));
  const matrix = new Float64Array(cuts * cuts);
  byMode.forEach((weights, c) => {
    byMode.forEach((other, d) => {
      for (let k = 0; k < count; k++) matrix[c * cuts + d] = matrix[c * cuts + d]! + weights[k]! * other[k]! * ease[k]!;
    });
  });
  const inverse = solution(factorCholesky(matrix, cuts), cuts);
  return (t, z) => {
    const [current, rise] = [wave.currentA[t]!, wave.slopeAPerS[t]!];
    const pushed = Float64Array.from(own, (share) => share * rise);
    for (let k = 0; k < count; k++) {
      const push = (-drive.byCurrent[k]! * current - drive.bySlope[k]! * rise - lost[k]! * z[k]!) * ease[k]!;
      for (let c = 0; c < cuts; c++) pushed[c] = pushed[c]! + byMode[c]![k]! * push;
    }
    return pushed.map((_, c) => pushed.reduce((sum, value, d) => sum + inverse[c * cuts + d]! * value, 0));
  };
}
