import { type Point, packPieces, type StraightPiece } from '../../src/surge/straight-piece.ts';

/**
 * Straight pieces of 10 to 100 radii, radii of 1 to 100 mm, some joined end to end in a tree, some loose, some along the axes,
 * in a space so small that many pass close by. Surfaces touch at joints alone: axes at least the sum of the radii apart.
 */
export function randomLayout(seed: number, count: number): readonly StraightPiece[] {
  const next = randomNumbers(seed);
  const spaceM = 10 ** (2 * next() - 1);
  const joints: Point[] = [[0, 0, 0]];
  const pieces: StraightPiece[] = [];
  for (let trial = 0; pieces.length < count && trial < 100 * count; trial++) {
    const joined = next() < 0.7;
    const from = joined ? joints[Math.floor(next() * joints.length)]! : somewhere(next, spaceM);
    const radiusM = 10 ** (2 * next() - 3);
    const lengthM = radiusM * 10 ** (1 + next());
    const way = next() < 0.4 ? axis(next) : direction(next);
    const to: Point = [from[0] + lengthM * way[0], from[1] + lengthM * way[1], from[2] + lengthM * way[2]];
    const piece = { from, to, radiusM };
    if (!pieces.every((other) => isClear(piece, other))) continue;
    pieces.push(piece);
    joints.push(to);
    if (!joined) joints.push(from);
  }
  return pieces;
}

function randomNumbers(seed: number): () => number {
  let state = seed * 2654435761;
  return () => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return state / 0x80000000;
  };
}

function somewhere(next: () => number, spaceM: number): Point {
  return [spaceM * next(), spaceM * next(), spaceM * next()];
}

function axis(next: () => number): Point {
  const at = Math.floor(3 * next());
  const sign = next() < 0.5 ? 1 : -1;
  return [at === 0 ? sign : 0, at === 1 ? sign : 0, at === 2 ? sign : 0];
}

function direction(next: () => number): Point {
  const [x, y, z] = [next() - 0.5, next() - 0.5, next() - 0.5];
  const size = Math.hypot(x, y, z) || 1;
  return [x / size, y / size, z / size];
}

/** Pieces with a joint in common must leave it at 6 degrees or more; others must stay apart. */
function isClear(a: StraightPiece, b: StraightPiece): boolean {
  const p = packPieces([a, b]);
  const cosine = p.ux[0]! * p.ux[1]! + p.uy[0]! * p.uy[1]! + p.uz[0]! * p.uz[1]!;
  if (b.from === a.from || b.to === a.from) return (b.from === a.from ? cosine : -cosine) < Math.cos(0.1);
  return gapM(a, b) >= a.radiusM + b.radiusM;
}

/** Least distance of two pieces, by drawing the nearest point of each in turn to the other: it is convex, so this ends there. */
function gapM(a: StraightPiece, b: StraightPiece): number {
  let s = 0.5;
  let point = at(b, 0.5);
  for (let step = 0; step < 60; step++) {
    s = footOn(a, point);
    point = at(b, footOn(b, at(a, s)));
  }
  const here = at(a, s);
  return Math.hypot(here[0] - point[0], here[1] - point[1], here[2] - point[2]);
}

function at({ from, to }: StraightPiece, s: number): Point {
  return [from[0] + s * (to[0] - from[0]), from[1] + s * (to[1] - from[1]), from[2] + s * (to[2] - from[2])];
}

function footOn({ from, to }: StraightPiece, point: Point): number {
  let [along, square] = [0, 0];
  for (const k of [0, 1, 2] as const) {
    along += (point[k] - from[k]) * (to[k] - from[k]);
    square += (to[k] - from[k]) ** 2;
  }
  return Math.min(1, Math.max(0, along / square));
}
