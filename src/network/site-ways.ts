import { positionsOf } from '../site/positions-of.ts';
import type { Part, PointRef, Position, RoutePoint, Site } from '../site/site.ts';

/** The places at which an end may land: one, or anywhere along a whole route; [] where nobody knows. */
export type Way = readonly Position[];

/** Ways by point of a site. */
export function siteWays(site: Site, partOf: (id: string) => Part | undefined): (point: PointRef) => Way {
  const placeOf = positionsOf(site, partOf).of;
  return (point) => wayOfPoint(point, partOf, placeOf);
}

/** One rod of a group, or a point along a wire, is not at the place of the whole. A wire lands at the nearest point. */
function wayOfPoint(
  point: PointRef,
  partOf: (id: string) => Part | undefined,
  placeOf: (id: string | null) => Position | null,
): Way {
  const part = point.part === null ? undefined : partOf(point.part);
  const isAlong = point.atM !== null && point.mark === null;
  if (point.member !== null && part?.section !== 'supports') return [];
  if (part?.section === 'electrodes' && part.route !== null) {
    return isAlong ? [] : routeWay(part.route, part.closed === 'yes' || part.kind === 'ring');
  }
  if (isAlong && part?.section !== 'supports') return [];
  const place = placeOf(point.part);
  return place === null ? [] : [place];
}

/** [] where a point of it is not known. */
export function routeWay(route: readonly RoutePoint[] | null, isClosed = false): Way {
  const points = (route ?? []).map((p) => p.position);
  if (points.length < 2 || points.some((p) => p === null)) return [];
  const known = points as readonly Position[];
  return isClosed ? [...known, known[0]!] : known;
}

/** Where two ways come nearest to each other: at a corner or end of one of them. */
export function nearestPair(a: Way, b: Way): readonly [Position, Position] {
  const pairs = [
    ...a.map((point) => [point, nearestOn(b, point)] as const),
    ...b.map((point) => [nearestOn(a, point), point] as const),
  ];
  return pairs.reduce((best, pair) => (apartM(pair[0], pair[1]) < apartM(best[0], best[1]) ? pair : best));
}

function nearestOn(way: Way, to: Position): Position {
  if (way.length === 1) return way[0]!;
  const feet = way.slice(1).map((end, i) => footOn(way[i]!, end, to));
  return feet.reduce((best, foot) => (apartM(foot, to) < apartM(best, to) ? foot : best));
}

function footOn(from: Position, end: Position, to: Position): Position {
  const [x, y] = [end[0] - from[0], end[1] - from[1]];
  const squared = x * x + y * y;
  const along = squared === 0 ? 0 : ((to[0] - from[0]) * x + (to[1] - from[1]) * y) / squared;
  const share = Math.min(1, Math.max(0, along));
  return [from[0] + share * x, from[1] + share * y, from[2]];
}

function apartM(a: Position, b: Position): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
