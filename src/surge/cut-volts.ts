import { factorCholesky, factorLu, solveFactored } from '../math/dense.ts';
import type { CutStep } from './cut-step.ts';
import type { SurgeCourse } from './surge-course.ts';
import type { SurgeDrive } from './surge-drive.ts';

/** A branch that is cut, none following from the others. */
export interface Cut {
  /** Of volts over it. What they do to a mode, that mode drives through it. */
  readonly drive: SurgeDrive;
  /** Share of the source's current that goes this way by the tree: 1, -1 or 0. */
  readonly own: number;
  /** What flows there uncut at the three points of each pair of steps. */
  readonly uncutA: Float64Array;
}

/**
 * Volts over cuts at the three points of a pair of steps (point by point, cut by cut), put into `volts`, that keep all their currents at
 * zero there: from the change that the cuts have made so far, and from what would flow at the points with no cut.
 */
export function pointVolts(
  cuts: readonly Cut[],
  stepOf: (stepS: number) => CutStep,
): (stepS: number, pair: number, change: Float64Array, volts: Float64Array) => void {
  const inverses = new Map<number, Float64Array>();
  const flowing = new Float64Array(3 * cuts.length);
  return (stepS, pair, change, volts) => {
    const { kept, answer } = stepOf(stepS);
    const inverse = inverses.get(stepS) ?? inverted(cuts, answer);
    inverses.set(stepS, inverse);
    for (let c = 0; c < cuts.length; c++) {
      const { drive, uncutA } = cuts[c]!;
      for (let p = 0; p < 3; p++)
        flowing[p * cuts.length + c] = uncutA[3 * pair + p]! + tripleProduct(drive.byCurrent, change, kept[p]!);
    }
    product(inverse, flowing, volts);
  };
}

/** Of the matrix that says what 1 V over a cut, by the parabola of a point, takes from each current at each point. */
function inverted(cuts: readonly Cut[], answer: readonly Float64Array[]): Float64Array {
  const size = 3 * cuts.length;
  const matrix = new Float64Array(size * size);
  for (let c = 0; c < cuts.length; c++) {
    for (let d = 0; d < cuts.length; d++) {
      for (let sp = 0; sp < 9; sp++) {
        const at = (Math.floor(sp / 3) * cuts.length + c) * size + (sp % 3) * cuts.length + d;
        matrix[at] = tripleProduct(cuts[c]!.drive.byCurrent, cuts[d]!.drive.byCurrent, answer[sp]!);
      }
    }
  }
  return inverseOf(factorLu(matrix, size), size);
}

/** Sum of the products of three rows. Small loops in functions of their own: the engine compiles those once and for all. */
function tripleProduct(a: Float64Array, b: Float64Array, c: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]! * c[k]!;
  return sum;
}

function inverseOf(factor: ReturnType<typeof factorLu>, size: number): Float64Array {
  if (!factor.ok) throw new Error('cuts of which one follows from the others');
  const unit = new Float64Array(size * size);
  for (let i = 0; i < size; i++) unit[i * (size + 1)] = 1;
  return solveFactored(factor, unit, size).solution;
}

function product(matrix: Float64Array, vector: Float64Array, into: Float64Array): void {
  const size = vector.length;
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += matrix[i * size + j]! * vector[j]!;
    into[i] = sum;
  }
}

/** A loop of resistances counts as one of this time constant, seconds: nothing of a stroke is as fast. */
const quickS = 1e-12;

/**
 * Volts over cuts at one time, put into `volts`, from the modes alone: those that keep the slopes of all their currents at zero,
 * sum g g' / stored u = sum g (f - lost z) / stored + own di/dt, with g what a mode drives through a cut and f the drive of the source.
 */
export function endVolts(
  cuts: readonly Cut[],
  { modes, drive, wave }: SurgeCourse,
): (t: number, z: Float64Array, volts: Float64Array) => void {
  const { count, stored, lost } = modes;
  const size = cuts.length;
  const eased = cuts.map((cut) =>
    cut.drive.byCurrent.map((weight, k) => weight / Math.max(stored[k]!, quickS * lost[k]!)),
  );
  const matrix = new Float64Array(size * size);
  cuts.forEach((cut, c) => {
    eased.forEach((other, d) => {
      for (let k = 0; k < count; k++)
        matrix[c * size + d] = matrix[c * size + d]! + cut.drive.byCurrent[k]! * other[k]!;
    });
  });
  const inverse = inverseOf(factorCholesky(matrix, size), size);
  const pushed = new Float64Array(size);
  // what a current, a slope of it and the modes themselves push through the cuts
  const { byCurrent, bySlope } = drive;
  const pushes = eased.map((weights) => ({
    byCurrent: rowProduct(weights, byCurrent, 0),
    bySlope: rowProduct(weights, bySlope, 0),
    byMode: weights.map((weight, k) => weight * lost[k]!),
  }));
  return (t, z, volts) => {
    const [current, rise] = [wave.currentA[t]!, wave.slopeAPerS[t]!];
    for (let c = 0; c < size; c++) {
      const push = pushes[c]!;
      pushed[c] =
        (cuts[c]!.own - push.bySlope) * rise - push.byCurrent * current - rowProduct(push.byMode, z, t * count);
    }
    product(inverse, pushed, volts);
  };
}

function rowProduct(weights: Float64Array, states: Float64Array, start: number): number {
  let sum = 0;
  for (let k = 0; k < weights.length; k++) sum += weights[k]! * states[start + k]!;
  return sum;
}
