import type { Electrode, Position } from '../../site/site.ts';

export type Plan = readonly [eastM: number, northM: number];

/** Where it lies on the plan: its route, or its place; empty where nobody said. */
export function courseOf({ route, position, closed }: Electrode): readonly Plan[] {
  const typed = (route ?? []).map((p) => p.position);
  if (typed.length < 2) return position === null ? [] : [plan(position)];
  if (typed.some((p) => p === null)) return [];
  const run = typed.map((p) => plan(p!));
  return closed === 'yes' ? [...run, run[0]!] : run;
}

export const plan = ([eastM, northM]: Position): Plan => [eastM, northM];

/** Least distance between a course (or a single place) and another, metres. */
export function coursesApart(a: readonly Plan[], b: readonly Plan[]): number {
  const [as, bs] = [pieces(a), pieces(b)];
  return Math.min(...as.flatMap((p) => bs.map((q) => piecesApart(p, q))));
}

/** Whether the point is inside the shape that the corners go round. */
export function isInside([x, y]: Plan, corners: readonly Plan[]): boolean {
  let inside = false;
  corners.forEach(([x1, y1], i) => {
    const [x2, y2] = corners[(i + 1) % corners.length]!;
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside;
  });
  return inside;
}

/** Area that the corners go round, square metres. */
export function areaInside(corners: readonly Plan[]): number {
  const twice = corners.map(([x1, y1], i) => {
    const [x2, y2] = corners[(i + 1) % corners.length]!;
    return x1 * y2 - x2 * y1;
  });
  return Math.abs(twice.reduce((a, b) => a + b, 0)) / 2;
}

type Piece = readonly [Plan, Plan];

function pieces(course: readonly Plan[]): readonly Piece[] {
  if (course.length === 1) return [[course[0]!, course[0]!]];
  return course.slice(1).map((to, i): Piece => [course[i]!, to]);
}

/** Two pieces that cross are 0 m apart; otherwise the least distance is at an end of one of them. */
function piecesApart([a, b]: Piece, [c, d]: Piece): number {
  if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return 0;
  return Math.min(toPiece(a, c, d), toPiece(b, c, d), toPiece(c, a, b), toPiece(d, a, b));
}

const side = (a: Plan, b: Plan, p: Plan) => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);

function toPiece(p: Plan, a: Plan, b: Plan): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square;
  const t = Math.min(1, Math.max(0, share));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}
