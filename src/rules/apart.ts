import { partIndex } from '../facts/part-index.ts';
import { positionsOf } from '../site/positions-of.ts';
import type { Part, Position, Site } from '../site/site.ts';
import { exact, type Interval, min } from '../units/interval.ts';
import { isPool } from './is-pool.ts';

type Plan = readonly [eastM: number, northM: number];
type Outline = readonly (readonly [Plan, Plan])[];

/**
 * How far two parts are from each other, metres: what `near` of either says (the least of several), else the least distance
 * on the plan between their places or routes; a pool is a closed shape, and what stands in it is 0 m away. null: unknown.
 */
export function apart(site: Site): (a: string, b: string) => Interval | null {
  const index = partIndex(site);
  const positions = positionsOf(site, index.get);
  const outlineOf = (part: Part): Outline => outline(part, positions.of(part.id));
  return (a, b) => {
    const [one, other] = [index.get(a), index.get(b)];
    if (one === undefined || other === undefined) return null;
    return typedApart(one, other) ?? onPlan(outlineOf(one), outlineOf(other), [one, other]);
  };
}

/** What `near` of either says of the other, metres, the least of several; null: nothing. */
export function typedApart(one: Part, other: Part): Interval | null {
  return typedNear(one, other.id, typedNear(other, one.id, null));
}

function typedNear(part: Part, other: string, found: Interval | null): Interval | null {
  const typed = part.near.flatMap((n) => (n.part === other && n.distanceM !== null ? [n.distanceM] : []));
  return typed.reduce<Interval | null>((least, d) => (least === null ? d : min(least, d)), found);
}

/** Straight pieces on the plan; a place alone is a piece of no length. */
function outline(part: Part, position: Position | null): Outline {
  const route = 'route' in part ? (part.route ?? []).flatMap((p) => (p.position === null ? [] : [p.position])) : [];
  if (route.length < 2) {
    const at = route[0] ?? position;
    return at === null ? [] : [[plan(at), plan(at)]];
  }
  const run = part.section === 'metalwork' && isPool(part.kind) ? [...route, route[0]!] : route;
  return run.slice(1).map((to, i) => [plan(run[i]!), plan(to)]);
}

const plan = ([eastM, northM]: Position): Plan => [eastM, northM];

function onPlan(a: Outline, b: Outline, [one, other]: readonly [Part, Part]): Interval | null {
  if (a.length === 0 || b.length === 0) return null;
  const isWithin = (shape: Outline, part: Part, at: Outline) => isPool(part.kind) && holds(shape, at[0]![0]);
  if (isWithin(a, one, b) || isWithin(b, other, a)) return exact(0);
  return exact(Math.min(...a.flatMap((p) => b.map((q) => piecesApart(p, q)))));
}

/** Two pieces that cross are 0 m apart; otherwise the least distance is at an end of one of them. */
function piecesApart([a, b]: Outline[number], [c, d]: Outline[number]): number {
  const isCrossing = side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  if (isCrossing) return 0;
  return Math.min(toPiece(a, c, d), toPiece(b, c, d), toPiece(c, a, b), toPiece(d, a, b));
}

/** Twice the area of the triangle a, b, p; positive where p is to the left. */
const side = (a: Plan, b: Plan, p: Plan) => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);

function toPiece(p: Plan, a: Plan, b: Plan): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length2 = dx * dx + dy * dy;
  const along = length2 === 0 ? 0 : ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / length2;
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}

/** Whether a point lies inside a closed outline: a ray to the east crosses it an odd number of times. */
function holds(shape: Outline, [x, y]: Plan): boolean {
  const crossed = shape.filter(
    ([[ax, ay], [bx, by]]) => ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax),
  );
  return crossed.length % 2 === 1;
}
