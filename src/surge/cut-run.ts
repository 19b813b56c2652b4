import { independentRows } from '../math/independent-rows.ts';
import { type CutStep, cutSteps } from './cut-step.ts';
import { type Cut, endVolts, pointVolts } from './cut-volts.ts';
import { radauParabolas, radauPoints } from './radau.ts';
import type { SurgeCourse } from './surge-course.ts';
import { voltsDrive } from './surge-drive.ts';
import { currentFigure, overTime } from './surge-figure.ts';
import { waysWithout } from './surge-loops.ts';
import type { SurgeRun } from './surge-run.ts';
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
 * keeps its current at zero. That voltage is a parabola over a pair of steps, the current zero at its Radau points. What is
 * worked out for one cut serves the next: make one cutter for all of them. RangeError: no such branch.
 */
export function cutter(run: SurgeRun): (branches: readonly number[]) => CutCourse | CutOff {
  const stepOf = cutSteps(run.modes);
  const wave = inTwiceTheSteps(run.wave);
  const atPoints = pointsOf(run.wave.timesS);
  return (branches) => {
    const { network } = run.modes;
    const wrong = branches.find((branch) => network.branches[branch] === undefined);
    if (wrong !== undefined) throw new RangeError(`no branch ${wrong} to cut`);
    const toEarth = waysWithout(network, run.modes.loops, new Set(branches));
    const separated = toEarth.flatMap((way, node) => (way === null ? [node] : []));
    if (run.source.node !== null && toEarth[run.source.node] === null) return { ok: false, separated };
    const modes = { ...run.modes, loops: { ...run.modes.loops, toEarth } };
    const cuts = cutsOf(run, branches, atPoints);
    return { ok: true, ...run, modes, wave, separated, ...stepped({ ...run, wave }, cuts, stepOf) };
  };
}

/** Those of the cuts that do not follow from the others, as the last way into a node does. */
function cutsOf(
  run: SurgeRun,
  branches: readonly number[],
  atPoints: (figures: Float64Array) => Float64Array,
): readonly Cut[] {
  const drives = branches.map((branch) => voltsDrive(run.modes, branch));
  const kept = independentRows(
    drives.map((drive) => drive.byCurrent),
    leastIndependent,
  );
  return kept.map((at) => ({
    drive: drives[at]!,
    own: run.drive.way[branches[at]!]!,
    uncutA: atPoints(overTime(run, currentFigure(run, drives[at]!.ownOhm!))),
  }));
}

/** Part of a cut that the others do not have already, in the measure in which losses and energies weigh alike. */
const leastIndependent = 1e-9;

/** Figures at the Radau points of each pair of steps, by the polynomials through the five times about it. */
function pointsOf(timesS: Float64Array): (figures: Float64Array) => Float64Array {
  const pairs = (timesS.length - 1) / 2;
  const starts = Int32Array.from({ length: pairs }, (_, pair) =>
    Math.min(Math.max(0, 2 * pair - 1), timesS.length - 5),
  );
  const weights = new Float64Array(15 * pairs);
  for (let at = 0; at < 3 * pairs; at++) {
    const pair = Math.floor(at / 3);
    const [from, to] = [timesS[2 * pair]!, timesS[2 * pair + 2]!];
    const about = timesS.subarray(starts[pair]!, starts[pair]! + 5);
    weights.set(lagrange(about, from + radauPoints[at % 3]! * (to - from)), 5 * at);
  }
  return (figures) => {
    const points = new Float64Array(3 * pairs);
    for (let at = 0; at < points.length; at++) {
      const first = starts[Math.floor(at / 3)]!;
      let sum = 0;
      for (let i = 0; i < 5; i++) sum += weights[5 * at + i]! * figures[first + i]!;
      points[at] = sum;
    }
    return points;
  };
}

function lagrange(times: Float64Array, time: number): Float64Array {
  return times.map((own, i) =>
    times.reduce((weight, other, j) => (i === j ? weight : (weight * (time - other)) / (own - other)), 1),
  );
}

/** Times of a course and of its states are the ends of pairs of steps; `course.z` still has all steps. */
function stepped(
  course: SurgeCourse & Pick<SurgeRun, 'errorShare'>,
  cuts: readonly Cut[],
  stepOf: (stepS: number) => CutStep,
): Pick<CutCourse, 'z' | 'inputs' | 'errorShare'> {
  const { wave, modes } = course;
  const times = wave.timesS.length;
  const z = new Float64Array(times * modes.count);
  const change = new Float64Array(modes.count);
  const inputs = cuts.map(({ drive }) => ({
    drive,
    value: new Float64Array(times),
    slope: new Float64Array(times),
  }));
  const volts = { atPoints: new Float64Array(3 * cuts.length), atEnd: new Float64Array(cuts.length) };
  const [setPointVolts, setEndVolts] = [pointVolts(cuts, stepOf), endVolts(cuts, course)];
  let [apart, largest] = [0, 0];
  for (let t = 0; t < times; t++) {
    const stepS = wave.stepS[t]!;
    if (t > 0) {
      setPointVolts(stepS, t - 1, change, volts.atPoints);
      advance(stepOf(stepS), cuts, volts.atPoints, change);
    }
    changed(z, t * modes.count, course.z, change);
    setEndVolts(t, z, volts.atEnd);
    for (let c = 0; c < cuts.length; c++) {
      const volt = volts.atEnd[c]!;
      inputs[c]!.value[t] = volt;
      inputs[c]!.slope[t] = riseAt(volts.atPoints, c, cuts.length, stepS);
      if (t > 0) apart = Math.max(apart, Math.abs(volt - volts.atPoints[2 * cuts.length + c]!));
      largest = Math.max(largest, Math.abs(volt));
    }
  }
  const source = { drive: course.drive, value: wave.currentA, slope: wave.slopeAPerS };
  const errorShare = largest === 0 ? course.errorShare : Math.max(course.errorShare, apart / largest);
  return { z, inputs: [source, ...inputs], errorShare };
}

function advance({ kept, answer }: CutStep, cuts: readonly Cut[], volts: Float64Array, change: Float64Array): void {
  keep(change, kept[2]!);
  for (let c = 0; c < cuts.length; c++) {
    for (let p = 0; p < 3; p++)
      takeProduct(change, cuts[c]!.drive.byCurrent, answer[6 + p]!, volts[p * cuts.length + c]!);
  }
}

/** Slope of the parabola of a cut at the end of its pair. */
function riseAt(volts: Float64Array, cut: number, cuts: number, stepS: number): number {
  if (stepS === 0) return 0;
  let sum = 0;
  for (let p = 0; p < 3; p++) sum += volts[p * cuts + cut]! * parabolaEnds[p]!;
  return sum / stepS;
}

const parabolaEnds = radauParabolas.map(([, c1, c2]) => c1 + 2 * c2);

// Small loops in functions of their own: the engine compiles those once and for all.

/** Two steps of the whole run are one of ours. */
function changed(z: Float64Array, row: number, whole: Float64Array, change: Float64Array): void {
  for (let k = 0; k < change.length; k++) z[row + k] = whole[2 * row + k]! + change[k]!;
}

function keep(change: Float64Array, share: Float64Array): void {
  for (let k = 0; k < change.length; k++) change[k] = change[k]! * share[k]!;
}

function takeProduct(change: Float64Array, a: Float64Array, b: Float64Array, factor: number): void {
  for (let k = 0; k < change.length; k++) change[k] = change[k]! - factor * a[k]! * b[k]!;
}
