import type { SurgeCourse } from './surge-course.ts';
import type { SurgeDrive } from './surge-drive.ts';
import type { SignedWay } from './surge-loops.ts';
import { along, byModes, inductanceTimes, resistanceTimes, type SurgeModes } from './surge-modes.ts';

/** A figure that is linear in what happens in the elements of a network (branches, then electrodes). */
export interface SurgeFigure {
  /** Weights of the elements' currents, and of the slopes of these; null: none. */
  readonly current: Float64Array | null;
  readonly slope: Float64Array | null;
  /** Ways whose volts count that stand over elements by themselves (by a channel's field, over a cut), and their sign. */
  readonly own: readonly (readonly [way: SignedWay, sign: number])[];
  /** Weight of the slope of the stroke's current itself. */
  readonly strokeSlope: number;
}

/** A sum of element currents, each times its weight; `slopes`: of their slopes instead. */
export function currentFigure(_course: Pick<SurgeCourse, 'modes'>, weights: Float64Array, slopes = false): SurgeFigure {
  const given = weights.slice();
  return { current: slopes ? null : given, slope: slopes ? given : null, own: [], strokeSlope: 0 };
}

/** Potential of a node against remote earth, volts. RangeError: no such node, or it hangs free. */
export function potentialFigure({ modes }: Pick<SurgeCourse, 'modes'>, node: number): SurgeFigure {
  const way = modes.loops.toEarth[node];
  if (way == null) throw new RangeError(`node ${node} is not there or hangs free: its potential is not defined`);
  const { branches, earth } = modes.network;
  const [current, slope] = twoRows(branches.length + earth.nodes.length);
  return {
    current: resistanceTimes(modes.network, way, current),
    slope: inductanceTimes(modes.network, way, slope),
    own: [[way, 1]],
    strokeSlope: 0,
  };
}

/** Two rows of one array: memory for many short arrays is dear. */
function twoRows(count: number): readonly [Float64Array, Float64Array] {
  const both = new Float64Array(2 * count);
  return [both.subarray(0, count), both.subarray(count)];
}

/** One figure less another. */
export function figureDifference(a: SurgeFigure, b: SurgeFigure): SurgeFigure {
  return {
    current: less(a.current, b.current),
    slope: less(a.slope, b.slope),
    own: [...a.own, ...b.own.map(([way, sign]) => [way, -sign] as const)],
    strokeSlope: a.strokeSlope - b.strokeSlope,
  };
}

function less(a: Float64Array | null, b: Float64Array | null): Float64Array | null {
  if (b === null) return a;
  const result = a === null ? new Float64Array(b.length) : a.slice();
  for (let e = 0; e < b.length; e++) result[e] = result[e]! - b[e]!;
  return result;
}

/** A figure with what it has of each mode, and of the slope of each (null: none): the same for all courses of the same modes. */
export interface ModalFigure extends SurgeFigure {
  readonly byMode: Float64Array | null;
  readonly byModeSlope: Float64Array | null;
}

export function modalFigure(modes: SurgeModes, figure: SurgeFigure): ModalFigure {
  const { current, slope, own, strokeSlope } = figure;
  const [first, second] = current === null || slope === null ? [] : twoRows(modes.count);
  const byMode = current === null ? null : byModes(modes, current, first);
  const byModeSlope = slope === null ? null : byModes(modes, slope, second);
  return { current, slope, own, strokeSlope, byMode, byModeSlope };
}

/** A figure at all times of a course. */
export function overTime(course: SurgeCourse, figure: SurgeFigure | ModalFigure): Float64Array {
  const { modes, inputs, z } = course;
  const modal = 'byMode' in figure ? figure : modalFigure(modes, figure);
  const sums = new Float64Array(course.wave.timesS.length);
  addStates(sums, z, stateWeights(modes, modal));
  inputs.forEach((input, n) => {
    const [byValue, bySlope] = inputWeights(modes, modal, input.drive);
    addInput(sums, input.value, byValue);
    addInput(sums, input.slope, n === 0 ? bySlope + figure.strokeSlope : bySlope);
  });
  return sums;
}

/** Weights of the modes: the slope of a mode is its equation's, and part of it goes by the mode, part by the inputs. */
export function stateWeights({ count, stored, lost }: SurgeModes, { byMode, byModeSlope }: ModalFigure): Float64Array {
  const weights = byMode === null ? new Float64Array(count) : byMode.slice();
  if (byModeSlope === null) return weights;
  for (let k = 0; k < count; k++) {
    if (stored[k] !== 0) weights[k] = weights[k]! - (byModeSlope[k]! * lost[k]!) / stored[k]!;
  }
  return weights;
}

/** Direct weights of an input's value and slope in a figure. */
export function inputWeights(
  { count, stored, lost }: SurgeModes,
  { current, slope, own, byModeSlope }: ModalFigure,
  drive: SurgeDrive,
): readonly [byValue: number, bySlope: number] {
  let [byValue, bySlope] = [product(current, drive.way), product(slope, drive.way)];
  for (const [way, sign] of own) {
    if (drive.ownOhm !== null) byValue += sign * along(way, drive.ownOhm);
    if (drive.ownHenry !== null) bySlope += sign * along(way, drive.ownHenry);
  }
  if (byModeSlope === null) return [byValue, bySlope];
  for (let k = 0; k < count; k++) {
    const [weight, held] = [byModeSlope[k]!, stored[k]!];
    if (held === 0) bySlope -= (weight * drive.byCurrent[k]!) / lost[k]!;
    else {
      byValue -= (weight * drive.byCurrent[k]!) / held;
      bySlope -= (weight * drive.bySlope[k]!) / held;
    }
  }
  return [byValue, bySlope];
}

function product(weights: Float64Array | null, way: Float64Array): number {
  if (weights === null) return 0;
  let sum = 0;
  for (let e = 0; e < weights.length; e++) sum += weights[e]! * way[e]!;
  return sum;
}

function addInput(sums: Float64Array, figures: Float64Array, weight: number): void {
  if (weight !== 0) for (let t = 0; t < sums.length; t++) sums[t] = sums[t]! + weight * figures[t]!;
}

/** Few modes: mode by mode, most of which a figure has nothing of; many: row by row, as they lie. */
function addStates(sums: Float64Array, z: Float64Array, weights: Float64Array): void {
  const count = weights.length;
  if (count > 16) {
    for (let t = 0; t < sums.length; t++) sums[t] = sums[t]! + rowSum(z, t * count, weights);
    return;
  }
  for (let k = 0; k < count; k++) if (weights[k] !== 0) addMode(sums, z, k, count, weights[k]!);
}

function rowSum(z: Float64Array, row: number, weights: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < weights.length; k++) sum += weights[k]! * z[row + k]!;
  return sum;
}

function addMode(sums: Float64Array, z: Float64Array, first: number, count: number, weight: number): void {
  for (let t = 0, at = first; t < sums.length; t++, at += count) sums[t] = sums[t]! + weight * z[at]!;
}
