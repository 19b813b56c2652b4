import { independentRows } from '../math/independent-rows.ts';
import { type CutStep, cutSteps } from './cut-step.ts';
import { cutSolver, voltSolver } from './cut-volts.ts';
import { radauParabolas, radauPoints } from './radau.ts';
import { waysWithout } from './surge-loops.ts';
import { currentFigure, ofLoops, overTime, type SurgeCourse, type SurgeRun } from './surge-run.ts';
import { inTwiceTheSteps } from './surge-steps.ts';

/** The same stroke with branches cut. */
export interface CutCourse extends SurgeCourse {
  readonly ok: true;
  /** Nodes that no longer reach an electrode by metal: their potential is not defined. */
  readonly separated: readonly number[];
  /** Largest difference between two ways to the volts over a cut, over the largest volts. */
  readonly errorShare: number;
}

/** The struck node itself no longer reaches an electrode. */
export interface CutOff {
  readonly ok: false;
  readonly separated: readonly number[];
}

/**
 * The stroke of a run with branches taken out, without taking the network apart anew: over each cut stands the voltage that
 * keeps its current at zero. That voltage is a parabola over a block of steps, the current zero at its Radau points. What is
 * worked out for one cut serves the next: make one cutter for all of them. RangeError: no such branch.
 */
export function cutter(run: SurgeRun): (branches: readonly number[]) => CutCourse | CutOff {
  const stepOf = cutSteps(run.modes);
  const wave = inTwiceTheSteps(inTwiceTheSteps(run.wave));
  return (branches) => {
    const { network } = run.modes;
    const wrong = branches.find((branch) => network.branches[branch] === undefined);
    if (wrong !== undefined) throw new RangeError(`no branch ${wrong} to cut`);
    const toEarth = waysWithout(network, new Set(branches));
    const separated = toEarth.flatMap((way, node) => (way === null ? [node] : []));
    if (toEarth[run.source.node] === null) return { ok: false, separated };
    const modes = { ...run.modes, loops: { ...run.modes.loops, toEarth } };
    return { ok: true, ...run, modes, wave, separated, ...stepped({ ...run, wave }, cutsOf(run, branches), stepOf) };
  };
}

/** A branch that is cut: what each mode drives through it, and what flows there uncut at the three points of each block. */
interface Cut {
  readonly byMode: Float64Array;
  /** Share of the source's current that goes this way by the tree: 1, -1 or 0. */
  readonly own: number;
  readonly uncutA: Float64Array;
}

/** Those of the cuts that do not follow from the others, as the last way into a node does. */
function cutsOf(run: SurgeRun, branches: readonly number[]): readonly Cut[] {
  const elements = run.drive.way.length;
  const unit = (branch: number) => new Float64Array(elements).fill(1, branch, branch + 1);
  const rows = branches.map((branch) => ofLoops(run.modes, unit(branch)));
  return independentRows(rows, leastIndependent).map((at) => ({
    byMode: rows[at]!,
    own: run.drive.way[branches[at]!]!,
    uncutA: atPoints(overTime(run, currentFigure(run, unit(branches[at]!)))),
  }));
}

/** Part of a cut that the others do not have already, in the measure in which losses and energies weigh alike. */
const leastIndependent = 1e-9;

/** By the polynomial through the five times of each block. */
function atPoints(figures: Float64Array): Float64Array {
  const blocks = (figures.length - 1) / 4;
  return Float64Array.from({ length: 3 * blocks }, (_, at) => {
    const first = 4 * Math.floor(at / 3);
    return fifths[at % 3]!.reduce((sum, weight, i) => sum + weight * figures[first + i]!, 0);
  });
}

const fifths = radauPoints.map((point) =>
  [0, 1, 2, 3, 4].map((own) =>
    [0, 1, 2, 3, 4].reduce((weight, i) => (i === own ? weight : (weight * (4 * point - i)) / (own - i)), 1),
  ),
);

function stepped(
  course: SurgeCourse & Pick<SurgeRun, 'errorShare'>,
  cuts: readonly Cut[],
  stepOf: (stepS: number) => CutStep,
) {
  const { wave, modes } = course;
  const { count } = modes;
  const times = wave.timesS.length;
  const change = new Float64Array(count);
  const states = { z: new Float64Array(times * count), slope: new Float64Array(times * count) };
  const byMode = cuts.map((cut) => cut.byMode);
  const [solve, voltsAt] = [
    cutSolver(byMode, modes, stepOf),
    voltSolver(
      byMode,
      cuts.map((cut) => cut.own),
      course,
    ),
  ];
  let [apart, largest] = [0, 0];
  for (let t = 0; t < times; t++) {
    const stepS = wave.stepS[t]!;
    const volts = t === 0 ? new Float64Array(3 * cuts.length) : solve(stepS, change, uncutAt(cuts, t - 1));
    if (t > 0) advance(stepOf(stepS), byMode, volts, change);
    const row = t * count;
    for (let k = 0; k < count; k++) states.z[row + k] = course.z[4 * row + k]! + change[k]!;
    const end = voltsAt(t, states.z.subarray(row, row + count));
    setSlopes(course, { byMode, end, rise: risesAt(volts, cuts.length, stepS) }, t, states);
    end.forEach((volt, c) => {
      if (t > 0) apart = Math.max(apart, Math.abs(volt - volts[2 * cuts.length + c]!));
      largest = Math.max(largest, Math.abs(volt));
    });
  }
  return { ...states, errorShare: largest === 0 ? course.errorShare : Math.max(course.errorShare, apart / largest) };
}

/** Point by point, cut by cut. */
function uncutAt(cuts: readonly Cut[], block: number): Float64Array {
  return Float64Array.from(
    { length: 3 * cuts.length },
    (_, i) => cuts[i % cuts.length]!.uncutA[3 * block + Math.floor(i / cuts.length)]!,
  );
}

function advance(
  { kept, answer }: CutStep,
  byMode: readonly Float64Array[],
  volts: Float64Array,
  change: Float64Array,
): void {
  const last = kept[2]!;
  for (let k = 0; k < change.length; k++) change[k] = change[k]! * last[k]!;
  byMode.forEach((weights, c) => {
    for (let p = 0; p < 3; p++) {
      const [volt, end] = [volts[p * byMode.length + c]!, answer[6 + p]!];
      for (let k = 0; k < change.length; k++) change[k] = change[k]! - volt * weights[k]! * end[k]!;
    }
  });
}

/** Slope of the parabola of each cut at its end. */
function risesAt(volts: Float64Array, cuts: number, stepS: number): Float64Array {
  return Float64Array.from({ length: cuts }, (_, c) => {
    if (stepS === 0) return 0;
    return radauParabolas.reduce((sum, [, c1, c2], p) => sum + volts[p * cuts + c]! * (c1 + 2 * c2), 0) / stepS;
  });
}

interface CutsAt {
  readonly byMode: readonly Float64Array[];
  readonly end: Float64Array;
  readonly rise: Float64Array;
}

function setSlopes(
  { modes, drive, wave }: SurgeCourse,
  { byMode, end, rise }: CutsAt,
  t: number,
  { z, slope }: Pick<SurgeCourse, 'z' | 'slope'>,
): void {
  const { count, stored, lost } = modes;
  const [current, currentRise] = [wave.currentA[t]!, wave.slopeAPerS[t]!];
  for (let k = 0; k < count; k++) {
    const isQuick = stored[k] === 0;
    let push = isQuick
      ? -drive.byCurrent[k]! * currentRise
      : -drive.byCurrent[k]! * current - drive.bySlope[k]! * currentRise - lost[k]! * z[t * count + k]!;
    for (let c = 0; c < byMode.length; c++) push -= byMode[c]![k]! * (isQuick ? rise[c]! : end[c]!);
    slope[t * count + k] = push / (isQuick ? lost[k]! : stored[k]!);
  }
}
