import { factorCholesky, solveFactored } from '../math/dense.ts';
import type { SoilImages } from '../soil/layer-images.ts';
import type { Run } from './body.ts';
import { errorEstimate } from './error-estimate.ts';
import { influenceRows } from './influence-matrix.ts';
import { type Segments, segmentsOf, splitSegments } from './segments.ts';
import { mostPasses } from './solve-bodies.ts';

/**
 * Resistance (ohm) of a star alone: runs that differ by a turn about one upright line, so that all leak alike and one of them
 * is solved under the others, which carry what it carries. The same figure as `solveBodies`, with a matrix smaller by the
 * square of their number. Arms are cut finer until that takes less than `errorShare` off the estimate. null: the arms coincide
 * somewhere.
 */
export function starAlone(arms: readonly Run[], images: SoilImages, errorShare: number): number | null {
  const bodies = [{ runs: arms }];
  let segments = segmentsOf(bodies, images.soil);
  for (let pass = 1; ; pass++) {
    const solved = solveArm(segments, arms.length, images);
    if (solved === null || pass > mostPasses || solved.cutShare <= errorShare) return solved?.ohm ?? null;
    const finer = splitSegments(segments, bodies, images.soil, () => true);
    if (finer.count === segments.count || finer.count % arms.length !== 0) return solved.ohm;
    segments = finer;
  }
}

/** Segments stand arm by arm; those of the last are solved. */
function solveArm(segments: Segments, arms: number, images: SoilImages) {
  const size = segments.count / arms;
  const arm = lastOf(segments, size);
  const matrix = underAll(influenceRows(segments, images, segments.count - size), size, arms);
  const factored = factorCholesky(matrix, size);
  if (!factored.ok) return null;
  const { solution } = solveFactored(factored, new Float64Array(size).fill(1));
  const ampere = arms * solution.reduce((sum, each) => sum + each, 0);
  return { ohm: 1 / ampere, cutShare: errorEstimate(matrix, arm, 1, solution).cutShare[0]! };
}

/** Mean potential of each segment of the last arm per ampere from the like segment of every arm, symmetric (ohm). */
function underAll(rows: Float64Array, size: number, arms: number): Float64Array {
  const count = size * arms;
  const matrix = new Float64Array(size * size);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column <= row; column++) {
      let [ohm, turned] = [0, 0];
      for (let arm = 0; arm < arms; arm++) {
        ohm += rows[row * count + arm * size + column]!;
        // the rows of the last arm end at the diagonal: within it the upper half is the lower one
        turned +=
          arm === arms - 1 ? rows[row * count + arm * size + column]! : rows[column * count + arm * size + row]!;
      }
      matrix[row * size + column] = (ohm + turned) / 2;
      matrix[column * size + row] = matrix[row * size + column]!;
    }
  }
  return matrix;
}

function lastOf({ count, middleM, along, lengthM, radiusM, layer, sheathOhm }: Segments, size: number): Segments {
  const from = count - size;
  return {
    count: size,
    middleM: middleM.subarray(3 * from),
    along: along.subarray(3 * from),
    lengthM: lengthM.subarray(from),
    radiusM: radiusM.subarray(from),
    layer: layer.subarray(from),
    body: new Int32Array(size),
    run: new Int32Array(size),
    sheathOhm: sheathOhm.subarray(from),
  };
}
