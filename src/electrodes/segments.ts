import { boundariesM, type LayeredSoil, layerAt } from '../soil/layered-soil.ts';
import type { Body, Run, SoilPoint } from './body.ts';

/**
 * Straight pieces of bodies, each in one layer and giving off its current evenly: the boundary elements. One entry per
 * segment in every array; `middleM` and `along` (a unit vector) have three.
 */
export interface Segments {
  readonly count: number;
  /** East, north, depth. */
  readonly middleM: Float64Array;
  readonly along: Float64Array;
  readonly lengthM: Float64Array;
  readonly radiusM: Float64Array;
  readonly layer: Int32Array;
  /** Index of the body, and of the run among all runs of all bodies. */
  readonly body: Int32Array;
  readonly run: Int32Array;
  /** What a sheath adds to the segment's own resistance, ohm. */
  readonly sheathOhm: Float64Array;
}

/** How finely runs are cut: `counts[run]` pieces, or a count by the rule of `usualCount`. */
export type Cutting = (run: Run, runsOfBody: number) => number;

/** Pieces of a run by default, an even number; a body of many runs needs fewer in each. */
export function usualCount(_run: Run, runsOfBody: number): number {
  return 2 * Math.max(1, Math.round(usualPairs / Math.sqrt(runsOfBody)));
}
/** Two by two the pieces are taken together for the error estimate. */
const usualPairs = 7;

/** A piece is at least this many radii long: the field of a thin axis has no limit much below. */
const leastRadii = 2;

/** Pieces of all runs, cut at the boundaries of layers, shorter towards the ends, where more current leaves. */
export function segmentsOf(bodies: readonly Body[], soil: LayeredSoil, cutting: Cutting = usualCount): Segments {
  const cuts: Piece[] = [];
  let runIndex = 0;
  bodies.forEach(({ runs }, body) => {
    for (const run of runs) {
      for (const [from, to] of cut(run, soil, cutting(run, runs.length))) {
        cuts.push({ from, to, run, body, runIndex });
      }
      runIndex++;
    }
  });
  return fromPieces(cuts, soil);
}

interface Piece {
  readonly from: SoilPoint;
  readonly to: SoilPoint;
  readonly run: Run;
  readonly body: number;
  readonly runIndex: number;
}

/** The same with each marked segment cut in two. */
export function splitSegments(
  segments: Segments,
  bodies: readonly Body[],
  soil: LayeredSoil,
  isMarked: (segment: number) => boolean,
): Segments {
  const runs = bodies.flatMap((b) => b.runs);
  const pieces: Piece[] = [];
  for (let i = 0; i < segments.count; i++) {
    const run = runs[segments.run[i]!]!;
    const [from, to] = endsOf(segments, i);
    const body = segments.body[i]!;
    const runIndex = segments.run[i]!;
    const canSplit = segments.lengthM[i]! >= 2 * leastRadii * run.radiusM;
    if (isMarked(i) && canSplit) {
      const middle = between(from, to, 0.5);
      pieces.push({ run, body, runIndex, from, to: middle }, { run, body, runIndex, from: middle, to });
    } else pieces.push({ run, body, runIndex, from, to });
  }
  return fromPieces(pieces, soil);
}

/** Both ends of a segment. */
export function endsOf({ middleM, along, lengthM }: Segments, i: number): readonly [SoilPoint, SoilPoint] {
  const at = (side: number): SoilPoint => {
    const half = (side * lengthM[i]!) / 2;
    return [
      middleM[3 * i]! + half * along[3 * i]!,
      middleM[3 * i + 1]! + half * along[3 * i + 1]!,
      middleM[3 * i + 2]! + half * along[3 * i + 2]!,
    ];
  };
  return [at(-1), at(1)];
}

function fromPieces(pieces: readonly Piece[], soil: LayeredSoil): Segments {
  const count = pieces.length;
  const segments = {
    count,
    middleM: new Float64Array(3 * count),
    along: new Float64Array(3 * count),
    lengthM: new Float64Array(count),
    radiusM: new Float64Array(count),
    layer: new Int32Array(count),
    body: new Int32Array(count),
    run: new Int32Array(count),
    sheathOhm: new Float64Array(count),
  };
  pieces.forEach(({ from, to, run, body, runIndex }, i) => {
    const lengthM = distance(from, to);
    for (let axis = 0; axis < 3; axis++) {
      segments.middleM[3 * i + axis] = (from[axis]! + to[axis]!) / 2;
      segments.along[3 * i + axis] = (to[axis]! - from[axis]!) / lengthM;
    }
    segments.lengthM[i] = lengthM;
    segments.radiusM[i] = run.radiusM;
    segments.layer[i] = layerAt(soil, segments.middleM[3 * i + 2]!);
    segments.body[i] = body;
    segments.run[i] = runIndex;
    segments.sheathOhm[i] = sheathOhm(run, lengthM);
  });
  return segments;
}

/** Radial resistance of a tube of concrete or backfill: rho ln(D / d) / (2 pi l), as in IEEE Std 80-2000 clause 14.6. */
function sheathOhm({ radiusM, sheath }: Run, lengthM: number): number {
  if (sheath === null) return 0;
  return (sheath.resistivityOhmM * Math.log(radiusM / sheath.coreRadiusM)) / (2 * Math.PI * lengthM);
}

function cut(run: Run, soil: LayeredSoil, count: number): readonly (readonly [SoilPoint, SoilPoint])[] {
  const layers = crossingShares(run, soil);
  const least = (leastRadii * run.radiusM) / distance(run.from, run.to);
  const most = Math.max(1, Math.floor(1 / least));
  const marks = [...new Set([...gradedShares(Math.min(count, most)), ...layers])].sort((a, b) => a - b);
  const kept = [0];
  for (const mark of marks.slice(1)) {
    const isFixed = mark === 1 || layers.includes(mark);
    // a cut that layers or the end ask for stands; one before it that would leave a sliver goes
    while (isFixed && kept.length > 1 && mark - kept.at(-1)! < least && !layers.includes(kept.at(-1)!)) kept.pop();
    if (isFixed || mark - kept.at(-1)! >= least) kept.push(mark);
  }
  return kept
    .slice(1)
    .map((share, k) => [between(run.from, run.to, kept[k]!), between(run.from, run.to, share)] as const);
}

/** Ends of pieces from 0 to 1: closer together towards both ends. */
function gradedShares(count: number): readonly number[] {
  return Array.from({ length: count + 1 }, (_, k) => {
    const even = k / count;
    const cosine = (1 - Math.cos(Math.PI * even)) / 2;
    return k === count ? 1 : (1 - grading) * even + grading * cosine;
  });
}
/** 0: pieces of equal length; 1: as the zeros of a Chebyshev polynomial. */
const grading = 0.7;

function crossingShares(run: Run, soil: LayeredSoil): readonly number[] {
  const [top, foot] = [run.from[2], run.to[2]];
  const sliver = (leastSliverRadii * run.radiusM) / distance(run.from, run.to);
  return boundariesM(soil)
    .map((depth) => (depth - top) / (foot - top))
    .filter((share) => share > sliver && share < 1 - sliver);
}
/** An end that is in the next layer by less, in radii, is not: a rod as long as a layer is thick ends by roundings. */
const leastSliverRadii = 0.01;

function between(from: SoilPoint, to: SoilPoint, share: number): SoilPoint {
  return [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
    from[2] + share * (to[2] - from[2]),
  ];
}

function distance(a: SoilPoint, b: SoilPoint): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
