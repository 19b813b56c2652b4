import type { Segments } from './segments.ts';
import type { SolvedBodies } from './solve-bodies.ts';
import { type GridFrame, placeOnGrid, type SurfaceGrid } from './surface-grid.ts';
import { surfacePotential } from './surface-potential.ts';

/**
 * The metal below a grid, seen from its corner and to a millimetre: equal for two grids with the same metal in the same
 * places. `members`: the bodies that the grid was laid round.
 */
export function metalBelow(segments: Segments, frame: GridFrame, members: readonly number[]): string {
  const own = new Set(members);
  const { middleM, along, lengthM, radiusM, body, count } = segments;
  const [widthM, heightM] = [(frame.columns - 1) * frame.stepM, (frame.rows - 1) * frame.stepM];
  const pieces: string[] = [];
  for (let i = 0; i < count; i++) {
    const [east, north] = [middleM[3 * i]! - frame.westM, middleM[3 * i + 1]! - frame.southM];
    if (east < 0 || north < 0 || east > widthM || north > heightM) continue;
    const figures = [east, north, middleM[3 * i + 2]!, lengthM[i]!, radiusM[i]!, ...along.subarray(3 * i, 3 * i + 3)];
    pieces.push(`${own.has(body[i]!)} ${figures.map((f) => f.toFixed(3)).join(' ')}`);
  }
  return [frame.stepM.toFixed(3), frame.columns, frame.rows, ...pieces.sort()].join(';');
}

/** Share of the rise that nobody sees on a map. */
const unseenShare = 5e-4;

/**
 * Whether the surface in a frame is that of a grid with the same metal below: what lies outside makes a smooth difference,
 * which is looked for at the corners, half way between them, and in the middle.
 */
export function isSameSurface(solved: SolvedBodies, bodyV: Float64Array, frame: GridFrame, grid: SurfaceGrid): boolean {
  const { columns, rows } = frame;
  const [middle, centre] = [Math.floor(columns / 2), Math.floor(rows / 2)];
  const probes = [0, centre, rows - 1].flatMap((row) => [0, middle, columns - 1].map((c) => row * columns + c));
  const places = Float64Array.from(probes.flatMap((k) => placeOnGrid(frame, k)));
  const found = surfacePotential(solved, bodyV, places);
  return probes.every((k, i) => Math.abs(found[i]! - grid.share[k]!) < unseenShare);
}
