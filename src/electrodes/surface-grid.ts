import { endsOf, type Segments } from './segments.ts';
import type { SolvedBodies } from './solve-bodies.ts';
import { potentialAt } from './surface-potential.ts';

/** Potential of the surface at even steps; one entry per point, from west to east, row by row from the south. */
export interface SurfaceGrid {
  readonly westM: number;
  readonly southM: number;
  readonly stepM: number;
  readonly columns: number;
  readonly rows: number;
  /** In the unit of the potentials of the bodies. */
  readonly share: readonly number[];
}

/** How far metal reaches on the plan, metres. */
export interface Extent {
  readonly westM: number;
  readonly eastM: number;
  readonly southM: number;
  readonly northM: number;
}

/** Points of the longer side: at most 33 by 33. */
const pointsOfSide = 33;
/** How far the grid goes beyond the metal: a third of its extent, and at least so much. */
const leastMarginM = 5;

/**
 * Potential of the surface on a square grid round some of the bodies, all bodies at the potentials given (volt, one per body).
 * Between two points of the grid it may rise and fall again: over a rod it is a peak as wide as the rod.
 */
export function surfaceGrid(solved: SolvedBodies, bodyV: ArrayLike<number>, bodies: readonly number[]): SurfaceGrid {
  const { westM, eastM, southM, northM } = extentOf(solved.segments, bodies);
  const extentM = Math.max(eastM - westM, northM - southM);
  const marginM = Math.max(leastMarginM, extentM / 3);
  const stepM = (extentM + 2 * marginM) / (pointsOfSide - 1);
  const columns = Math.floor((eastM - westM + 2 * marginM) / stepM + 1e-9) + 1;
  const rows = Math.floor((northM - southM + 2 * marginM) / stepM + 1e-9) + 1;
  const points = new Float64Array(3 * columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      points.set([westM - marginM + column * stepM, southM - marginM + row * stepM, 0], 3 * (row * columns + column));
    }
  }
  const share = Array.from(potentialAt(solved, bodyV, points));
  return { westM: westM - marginM, southM: southM - marginM, stepM, columns, rows, share };
}

/** Of some of the bodies, at least one. */
export function extentOf(segments: Segments, bodies: readonly number[]): Extent {
  const own = new Set(bodies);
  let [westM, eastM, southM, northM] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < segments.count; i++) {
    if (!own.has(segments.body[i]!)) continue;
    for (const [east, north] of endsOf(segments, i)) {
      westM = Math.min(westM, east);
      eastM = Math.max(eastM, east);
      southM = Math.min(southM, north);
      northM = Math.max(northM, north);
    }
  }
  if (westM === Infinity) throw new RangeError('no body to draw a grid round');
  return { westM, eastM, southM, northM };
}
