import { cubicSlopes, type PortStep, portSteps } from './port-step.ts';
import type { SurgeCourse } from './surge-course.ts';
import { portDrive, type SurgeDrive } from './surge-drive.ts';
import { figureDifference, inputWeights, modalFigure, potentialFigure, stateWeights } from './surge-figure.ts';
import type { SurgeModes } from './surge-modes.ts';

/** Two nodes between which something draws a current; null: remote earth. */
export interface PortEnds {
  readonly from: number;
  readonly to: number | null;
}

/** A network as seen from its ports: what their currents do to the modes, and their volts by the modes and by all currents. */
export interface PortSystem {
  readonly modes: SurgeModes;
  readonly source: SurgeDrive;
  readonly ports: readonly Port[];
  readonly stepOf: (stepS: number) => PortStep;
}

export interface Port {
  readonly drive: SurgeDrive;
  /** Volts from `from` to `to` by mode. */
  readonly byMode: Float64Array;
  /** Volts by value and by slope of each input: of the source, then of each port's current. */
  readonly direct: readonly (readonly [byValue: number, bySlope: number])[];
}

export function portSystem(course: SurgeCourse, ends: readonly PortEnds[]): PortSystem {
  const { modes, drive } = course;
  const drives = ends.map(({ from, to }) => portDrive(modes, from, to));
  const ports = ends.map(({ from, to }, p): Port => {
    const volts = potentialFigure(course, from);
    const figure = modalFigure(modes, to === null ? volts : figureDifference(volts, potentialFigure(course, to)));
    return {
      drive: drives[p]!,
      byMode: stateWeights(modes, figure),
      direct: [drive, ...drives].map((input) => inputWeights(modes, figure, input)),
    };
  });
  return { modes, source: drive, ports, stepOf: portSteps(modes) };
}

/** An input over a step: values and slopes at `stepPoints`. */
export interface StepInput {
  readonly drive: SurgeDrive;
  readonly values: Float64Array;
  readonly slopes: Float64Array;
}

/** Adds what an input does to the modes at the three Radau points. */
export function addInput({ answer }: PortStep, { drive, values, slopes }: StepInput, z: readonly Float64Array[]): void {
  for (let s = 0; s < 3; s++) {
    for (let p = 0; p < 4; p++) take(z[s]!, answer[4 * s + p]!, drive.byCurrent, drive.bySlope, values[p]!, slopes[p]!);
  }
}

function take(
  z: Float64Array,
  gain: Float64Array,
  byCurrent: Float64Array,
  bySlope: Float64Array,
  value: number,
  slope: number,
): void {
  for (let k = 0; k < z.length; k++) z[k] = z[k]! - gain[k]! * (byCurrent[k]! * value + bySlope[k]! * slope);
}

/** What is left of the modes at the three points of a step. */
export function keptStates({ kept }: PortStep, z: Float64Array): readonly Float64Array[] {
  return kept.map((share) => z.map((value, k) => value * share[k]!));
}

/** Volts of a port at Radau point s: by the modes there and by the inputs (in the order of `direct`). */
export function portVolts(
  { byMode, direct }: Port,
  z: Float64Array,
  inputs: readonly (StepInput | null)[],
  s: number,
): number {
  let volts = 0;
  for (let k = 0; k < z.length; k++) volts += byMode[k]! * z[k]!;
  inputs.forEach((input, n) => {
    if (input !== null) volts += direct[n]![0] * input.values[s + 1]! + direct[n]![1] * input.slopes[s + 1]!;
  });
  return volts;
}

/** Slopes at the four points of a step of the cubic through four values. */
export function slopesOf(values: Float64Array, stepS: number): Float64Array {
  return Float64Array.from(
    cubicSlopes,
    (weights) => weights.reduce((sum, weight, p) => sum + weight * values[p]!, 0) / stepS,
  );
}

/**
 * Volts at point s of port p for 1 A at point q of port n alone (both points of Radau, 3 by 3, row by row): the resistances that
 * the network shows its ports within one step.
 */
export function portBlock({ ports, stepOf }: PortSystem, stepS: number, p: number, n: number): Float64Array {
  const { answer } = stepOf(stepS);
  const { byMode, direct } = ports[p]!;
  const { byCurrent, bySlope } = ports[n]!.drive;
  const [byValue, byRise] = direct[n + 1]!;
  const block = new Float64Array(9);
  for (let s = 0; s < 3; s++) {
    const rises = [0, 1, 2, 3].map((at) => tripleProduct(byMode, bySlope, answer[4 * s + at]!));
    for (let q = 0; q < 3; q++) {
      let ohm = -tripleProduct(byMode, byCurrent, answer[4 * s + q + 1]!) + (s === q ? byValue : 0);
      rises.forEach((rise, at) => {
        ohm -= (rise * cubicSlopes[at]![q + 1]!) / stepS;
      });
      block[3 * s + q] = ohm + (byRise * cubicSlopes[s + 1]![q + 1]!) / stepS;
    }
  }
  return block;
}

function tripleProduct(a: Float64Array, b: Float64Array, c: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]! * c[k]!;
  return sum;
}
