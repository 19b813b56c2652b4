import { endsOf, type Segments } from './segments.ts';
import type { SolvedBodies } from './solve-bodies.ts';
import { surfacePotential } from './surface-potential.ts';

/** Where the points of a grid lie: even steps from the south-west corner. */
export interface GridFrame {
  readonly westM: number;
  readonly southM: number;
  readonly stepM: number;
  readonly columns: number;
  readonly rows: number;
}

/** Potential of the surface at even steps; one entry per point, from west to east, row by row from the south. */
export interface SurfaceGrid extends GridFrame {
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
 * Potential of the surface at the points of a grid, all bodies at the potentials given (volt, one per body). Between two
 * points it may rise and fall again: over a rod it is a peak as wide as the rod.
 */
export function surfaceGrid(solved: SolvedBodies, bodyV: ArrayLike<number>, frame: GridFrame): SurfaceGrid {
  const places = new Float64Array(2 * frame.columns * frame.rows);
  for (let k = 0; 2 * k < places.length; k++) places.set(placeOnGrid(frame, k), 2 * k);
  return { ...frame, share: Array.from(surfacePotential(solved, bodyV, places), readable) };
}

/** The square grid round some of the bodies. */
export function gridFrame(segments: Segments, bodies: readonly number[]): GridFrame {
  const { westM, eastM, southM, northM } = extentOf(segments, bodies);
  const extentM = Math.max(eastM - westM, northM - southM);
  const marginM = Math.max(leastMarginM, extentM / 3);
  const stepM = (extentM + 2 * marginM) / (pointsOfSide - 1);
  const columns = Math.floor((eastM - westM + 2 * marginM) / stepM + 1e-9) + 1;
  const rows = Math.floor((northM - southM + 2 * marginM) / stepM + 1e-9) + 1;
  return { westM: westM - marginM, southM: southM - marginM, stepM, columns, rows };
}

/** East and north of a point, counted as the shares are. */
export function placeOnGrid({ westM, southM, stepM, columns }: GridFrame, k: number): readonly [number, number] {
  return [westM + (k % columns) * stepM, southM + Math.floor(k / columns) * stepM];
}

/** To a millionth: what lies below is rounding. */
export function readable(share: number): number {
  return Math.round(share * 1e6) / 1e6;
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
