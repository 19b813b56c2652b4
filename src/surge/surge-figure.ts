import type { SurgeCourse } from './surge-course.ts';
import type { SurgeDrive } from './surge-drive.ts';
import { byModes, inductanceTimes, resistanceTimes, type SurgeModes } from './surge-modes.ts';

/** A figure that is linear in what happens in the elements of a network (branches, then electrodes). */
export interface SurgeFigure {
  /** Weights of the elements' currents, and of the slopes of these. */
  readonly current: Float64Array;
  readonly slope: Float64Array;
  /** Weights of the volts that stand over elements by themselves: by a channel's field, over a cut. */
  readonly own: Float64Array;
  /** Weight of the slope of the stroke's current itself. */
  readonly strokeSlope: number;
}

/** A sum of element currents, each times its weight; `slopes`: of their slopes instead. */
export function currentFigure(course: Pick<SurgeCourse, 'drive'>, weights: Float64Array, slopes = false): SurgeFigure {
  const none = new Float64Array(course.drive.way.length);
  const given = weights.slice();
  return { current: slopes ? none : given, slope: slopes ? given : none, own: none, strokeSlope: 0 };
}

/** Potential of a node against remote earth, volts. RangeError: no such node, or it hangs free. */
export function potentialFigure({ modes }: Pick<SurgeCourse, 'modes'>, node: number): SurgeFigure {
  const way = modes.loops.toEarth[node];
  if (way == null) throw new RangeError(`node ${node} is not there or hangs free: its potential is not defined`);
  const current = resistanceTimes(modes.network, way);
  const own = new Float64Array(current.length);
  way.elements.forEach((element, i) => {
    own[element] = way.signs[i]!;
  });
  return { current, slope: inductanceTimes(modes.network, way), own, strokeSlope: 0 };
}

/** One figure less another. */
export function figureDifference(a: SurgeFigure, b: SurgeFigure): SurgeFigure {
  const less = (of: Float64Array, other: Float64Array) => of.map((weight, e) => weight - other[e]!);
  return {
    current: less(a.current, b.current),
    slope: less(a.slope, b.slope),
    own: less(a.own, b.own),
    strokeSlope: a.strokeSlope - b.strokeSlope,
  };
}

/** A figure with what it has of each mode, and of the slope of each: the same for all courses of the same modes. */
export interface ModalFigure extends SurgeFigure {
  readonly byMode: Float64Array;
  readonly byModeSlope: Float64Array;
}

export function modalFigure(modes: SurgeModes, figure: SurgeFigure): ModalFigure {
  const { current, slope, own, strokeSlope } = figure;
  return { current, slope, own, strokeSlope, byMode: byModes(modes, current), byModeSlope: byModes(modes, slope) };
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

/** The slope of a mode is its equation's: part of it goes by the mode, part by the inputs. */
export function stateWeights({ stored, lost }: SurgeModes, { byMode, byModeSlope }: ModalFigure): Float64Array {
  const weights = byMode.slice();
  for (let k = 0; k < weights.length; k++) {
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
  let byValue = product(current, drive.way) + product(own, drive.ownOhm);
  let bySlope = product(slope, drive.way) + product(own, drive.ownHenry);
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

function product(a: Float64Array, b: Float64Array | null): number {
  if (b === null) return 0;
  let sum = 0;
  for (let e = 0; e < a.length; e++) sum += a[e]! * b[e]!;
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
