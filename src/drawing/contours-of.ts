import type { StudySurface } from '../study/study-earth.ts';
import type { Ground } from './plan-scale.ts';

type Grid = StudySurface['grid'];

/** One line of equal potential; closed where its first point is its last too. */
export type Contour = readonly Ground[];

/** An edge of the grid, by its number, and where the level crosses it. */
interface Crossing {
  readonly edge: number;
  readonly at: Ground;
}

/**
 * Lines along which a surface has a level, by marching squares with straight interpolation along the grid's edges: exact
 * for a plane, and off by no more than the surface bends within one square otherwise. Where two corners across from each
 * other lie above, the mean of the four says which way the lines run. Squares with a corner that is not a number are left
 * out. Time goes with the number of squares.
 */
export function contoursOf(grid: Grid, level: number): readonly Contour[] {
  const pieces: (readonly [Crossing, Crossing])[] = [];
  for (let row = 0; row + 1 < grid.rows; row++) {
    for (let column = 0; column + 1 < grid.columns; column++) {
      if (isCrossed(grid, level, row * grid.columns + column)) pieces.push(...piecesIn(grid, level, column, row));
    }
  }
  return joined(pieces);
}

/** Whether the corners of a square, counted by that in its south-west, are not all to one side of a level. */
function isCrossed({ share, columns }: Grid, level: number, corner: number): boolean {
  const isAbove = share[corner]! >= level;
  const others = [corner + 1, corner + columns, corner + columns + 1];
  return others.some((other) => share[other]! >= level !== isAbove);
}

/** Corners of a square against the clock from the south-west, and the edges between each and the next. */
function piecesIn(grid: Grid, level: number, column: number, row: number): readonly (readonly [Crossing, Crossing])[] {
  const corners = [
    [column, row],
    [column + 1, row],
    [column + 1, row + 1],
    [column, row + 1],
  ] as const;
  const shares = corners.map(([c, r]) => grid.share[r * grid.columns + c] ?? Number.NaN);
  if (!shares.every(Number.isFinite)) return [];
  const crossings = corners.flatMap((a, i): readonly Crossing[] => {
    const [j, b] = [(i + 1) % 4, corners[(i + 1) % 4]!];
    const [from, to] = [shares[i]!, shares[j]!];
    if (from >= level === to >= level) return [];
    const part = (level - from) / (to - from);
    const east = grid.westM + (a[0] + (b[0] - a[0]) * part) * grid.stepM;
    const north = grid.southM + (a[1] + (b[1] - a[1]) * part) * grid.stepM;
    return [{ edge: edgeNumber(grid, a, b), at: [east, north] }];
  });
  if (crossings.length < 4) return crossings.length < 2 ? [] : [[crossings[0]!, crossings[1]!]];
  const [s, e, n, w] = crossings as [Crossing, Crossing, Crossing, Crossing];
  const middleAbove = shares.reduce((a, b) => a + b, 0) / 4 >= level;
  return shares[0]! >= level === middleAbove ? cutOff(s, e, n, w) : cutOff(w, s, e, n);
}

/** The corners between the first two and between the last two are cut off. */
function cutOff(a: Crossing, b: Crossing, c: Crossing, d: Crossing): readonly (readonly [Crossing, Crossing])[] {
  return [
    [a, b],
    [c, d],
  ];
}

/** Two numbers for each corner: the edge to its east and the edge to its north. */
function edgeNumber(grid: Grid, a: readonly [number, number], b: readonly [number, number]): number {
  const corner = Math.min(a[1], b[1]) * grid.columns + Math.min(a[0], b[0]);
  return 2 * corner + (a[0] === b[0] ? 1 : 0);
}

/** Pieces end to end: lines that leave the grid first, then those that run in themselves. */
function joined(pieces: readonly (readonly [Crossing, Crossing])[]): readonly Contour[] {
  const atEdge = new Map<number, number[]>();
  pieces.forEach((piece, i) => {
    for (const { edge } of piece) atEdge.set(edge, [...(atEdge.get(edge) ?? []), i]);
  });
  const used = new Set<number>();
  const trace = (start: Crossing): Contour => {
    const points = [start.at];
    let edge = start.edge;
    for (;;) {
      const next = atEdge.get(edge)!.find((i) => !used.has(i));
      if (next === undefined) return points;
      used.add(next);
      const [a, b] = pieces[next]!;
      const end = a.edge === edge ? b : a;
      points.push(end.at);
      edge = end.edge;
    }
  };
  const open = pieces.flatMap((piece) => piece.filter(({ edge }) => atEdge.get(edge)!.length === 1));
  const starts = [...open, ...pieces.map(([a]) => a)];
  return starts.map((start) => trace(start)).filter((points) => points.length > 1);
}
