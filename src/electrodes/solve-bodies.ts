import { type FactoredMatrix, factorCholesky, solveFactored } from '../math/dense.ts';
import type { SoilImages } from '../soil/layer-images.ts';
import type { Body } from './body.ts';
import { conductanceOf, inverseOf, membership } from './body-conductance.ts';
import { type ErrorEstimate, errorEstimate } from './error-estimate.ts';
import { influenceMatrix } from './influence-matrix.ts';
import { type Cutting, type Segments, segmentsOf, splitSegments, usualCount } from './segments.ts';

export interface SolveOptions {
  /** Pieces that each run starts with; default `usualCount`. */
  readonly cutting?: Cutting;
  /** Runs are cut finer until what that takes off the error estimate of every body is below this; default 0.005. */
  readonly errorShare?: number;
  /** Default 3000. */
  readonly mostSegments?: number;
  /** Nothing is cut finer beyond so many segments; default `mostSegments`. */
  readonly finerUpTo?: number;
}

export interface SolvedBodies extends ErrorEstimate {
  readonly ok: true;
  readonly images: SoilImages;
  readonly segments: Segments;
  /** R of V = R I for the bodies, row by row: potential of each, as if it carried its current alone or together. */
  readonly resistanceOhm: Float64Array;
  /** Each without the others. */
  readonly aloneOhm: Float64Array;
  /** Ampere from each segment (rows) per volt of each body (columns), the other bodies at 0. */
  readonly leakage: Float64Array;
  /** Largest |b - A x| of the solve, relative. */
  readonly residual: number;
}

export interface UnsolvedBodies {
  readonly ok: false;
  /**
   * 'too many segments': more than allowed even with one per run and layer; 'not positive definite': two runs coincide, or
   * one crosses a sheet thinner than itself that resists ten thousand times more than what lies round it.
   */
  readonly reason: 'no body' | 'too many segments' | 'not positive definite';
  /** The body at which it failed, and how many segments there would be. */
  readonly body: number;
  readonly segments: number;
}

/** Most segments of one solve: three thousand take 140 MB. */
export const mostSegments = 3000;
const usualErrorShare = 0.005;
/** Passes of cutting finer. */
export const mostPasses = 4;

/**
 * Bodies of bare metal in layered soil, each at one potential, solved for the current that leaves along them. All feel each
 * other through the soil. Runs must lie at depth 0 or deeper and be longer than their radius (see `bodyTroubles`).
 */
export function solveBodies(
  bodies: readonly Body[],
  images: SoilImages,
  options: SolveOptions = {},
): SolvedBodies | UnsolvedBodies {
  const most = options.mostSegments ?? mostSegments;
  const finerUpTo = options.finerUpTo ?? most;
  const target = options.errorShare ?? usualErrorShare;
  if (bodies.length === 0) return { ok: false, reason: 'no body', body: 0, segments: 0 };
  const started = startingSegments(bodies, images, options.cutting ?? usualCount, most);
  if (started.count > most) return { ok: false, reason: 'too many segments', body: 0, segments: started.count };
  let segments = started;
  for (let pass = 1; ; pass++) {
    const solved = solveSegments(segments, bodies.length, images);
    if (!solved.ok || pass > mostPasses) return solved;
    const isCoarse = (body: number): boolean => solved.cutShare[body]! > target;
    const finer = splitSegments(segments, bodies, images.soil, (i) => isCoarse(segments.body[i]!));
    if (finer.count === segments.count || finer.count > finerUpTo) return solved;
    segments = finer;
  }
}

function startingSegments(bodies: readonly Body[], { soil }: SoilImages, cutting: Cutting, most: number): Segments {
  const wanted = segmentsOf(bodies, soil, cutting);
  return wanted.count <= most ? wanted : segmentsOf(bodies, soil, () => 1);
}

/** The same for given segments: one solve, no cutting. */
export function solveSegments(
  segments: Segments,
  bodyCount: number,
  images: SoilImages,
): SolvedBodies | UnsolvedBodies {
  const matrix = influenceMatrix(segments, images);
  const factored = factorCholesky(matrix, segments.count);
  if (!factored.ok) return refused(segments, factored.failingRow);
  const atOneVolt = solveFactored(factored, membership(segments.body, bodyCount), bodyCount);
  const resistanceOhm = inverseOf(conductanceOf(atOneVolt.solution, segments.body, bodyCount), bodyCount);
  if (resistanceOhm === null) return refused(segments, 0);
  return {
    ok: true,
    images,
    segments,
    resistanceOhm,
    aloneOhm: aloneOhm(matrix, segments, bodyCount, resistanceOhm),
    leakage: atOneVolt.solution,
    ...errorEstimate(matrix, segments, bodyCount, atOneVolt.solution),
    residual: atOneVolt.residual,
  };
}

function refused(segments: Segments, row: number): UnsolvedBodies {
  return { ok: false, reason: 'not positive definite', body: segments.body[row] ?? 0, segments: segments.count };
}

/** Own resistance of each body with the others taken out of the soil. */
function aloneOhm(matrix: Float64Array, segments: Segments, bodyCount: number, together: Float64Array): Float64Array {
  if (bodyCount === 1) return together.slice(0, 1);
  const members: number[][] = Array.from({ length: bodyCount }, () => []);
  segments.body.forEach((body, i) => {
    members[body]!.push(i);
  });
  return Float64Array.from(members, (own) => aloneOf(matrix, segments.count, own));
}

function aloneOf(matrix: Float64Array, size: number, own: readonly number[]): number {
  const block = new Float64Array(own.length * own.length);
  own.forEach((i, row) => {
    own.forEach((j, column) => {
      block[row * own.length + column] = matrix[i * size + j]!;
    });
  });
  const factored = factorCholesky(block, own.length) as FactoredMatrix;
  const { solution } = solveFactored(factored, new Float64Array(own.length).fill(1));
  return 1 / solution.reduce((sum, share) => sum + share, 0);
}
