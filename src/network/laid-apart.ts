import type { Point, StraightPiece } from '../surge/straight-piece.ts';

/** Pieces of metal, some moved aside, and which of them were. */
export interface LaidApart {
  readonly pieces: readonly StraightPiece[];
  readonly moved: readonly number[];
}

/**
 * Wires that were typed along one line lie side by side, not in one another: each that runs within another, or back over itself,
 * is moved two diameters aside, the next of them four, and so on to where nothing lies yet. A wire within something much thicker
 * (a core in its shield, a cable within the legs of a tower) stays where it is. `rank`: which lies there before which, by piece;
 * left out: in their order. Pieces of one rank go by their places.
 */
export function laidApart(pieces: readonly StraightPiece[], rank?: readonly number[]): LaidApart {
  const moved: number[] = [];
  const apart: Laid[] = [];
  const lying = [...pieces];
  for (const i of rank === undefined ? pieces.keys() : inRank(pieces, rank)) {
    const piece = pieces[i]!;
    let lies = laid(piece);
    for (let steps = 1; steps <= apart.length && apart.some((other) => runsWithin(lies, other)); steps++)
      lies = laid(aside(piece, steps * 4 * piece.radiusM));
    if (lies.piece !== piece) moved.push(i);
    lying[i] = lies.piece;
    apart.push(lies);
  }
  return { pieces: lying, moved: moved.sort((a, b) => a - b) };
}

function inRank(pieces: readonly StraightPiece[], rank: readonly number[]): readonly number[] {
  const places = pieces.map((piece) => upwards(piece).flat());
  return pieces.map((_, i) => i).sort((a, b) => rank[a]! - rank[b]! || compareFigures(places[a]!, places[b]!) || a - b);
}

/** Its ends, the one whose figures come first; whichever way the piece is told, it is moved to the same side. */
function upwards({ from, to }: StraightPiece): readonly [Point, Point] {
  return compareFigures(from, to) <= 0 ? [from, to] : [to, from];
}

function compareFigures(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((x, i) => x !== b[i]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}

/** A piece with its direction and its length. */
interface Laid {
  readonly piece: StraightPiece;
  readonly along: Point;
  readonly lengthM: number;
}

function laid(piece: StraightPiece): Laid {
  const [along, lengthM] = direction(piece);
  return { piece, along, lengthM };
}

/** Much thicker, in radii: then one can be inside the other. */
const muchThicker = 3;
/** Cosine from which two count as running alike, and metres of overlap from which they count as side by side. */
const alike = 0.9999;
const leastOverlapM = 0.01;

function runsWithin({ piece: a, along: other, lengthM: otherM }: Laid, { piece: b, along, lengthM }: Laid): boolean {
  if (Math.abs(dot(along, other)) < alike) return false;
  const ratio = a.radiusM / b.radiusM;
  if (ratio > muchThicker || ratio < 1 / muchThicker) return false;
  const way = less(a.from, b.from);
  const start = dot(way, along);
  const end = start + dot(other, along) * otherM;
  const overlapM = Math.min(Math.max(start, end), lengthM) - Math.max(Math.min(start, end), 0);
  if (overlapM < leastOverlapM) return false;
  const across = Math.sqrt(Math.max(0, dot(way, way) - start * start));
  return across < a.radiusM + b.radiusM;
}

/** Level and square to the piece; of an upright one, to the east. */
function aside({ from, to, radiusM }: StraightPiece, byM: number): StraightPiece {
  const [first, second] = upwards({ from, to, radiusM });
  const [[ux, uy]] = direction({ from: first, to: second, radiusM });
  const level = Math.hypot(ux, uy);
  const [sx, sy] = level < 1e-6 ? [1, 0] : [-uy / level, ux / level];
  const shifted = ([x, y, z]: Point): Point => [x + sx * byM, y + sy * byM, z];
  return { from: shifted(from), to: shifted(to), radiusM };
}

function direction({ from, to }: StraightPiece): readonly [Point, number] {
  const way = less(to, from);
  const lengthM = Math.sqrt(dot(way, way));
  return [[way[0] / lengthM, way[1] / lengthM, way[2] / lengthM], lengthM];
}

function less(a: Point, b: Point): Point {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
