import type { Body, SoilPoint } from '../electrodes/body.ts';
import { positionsOf } from '../site/positions-of.ts';
import type { Conductor, Part, PointRef, Position, RoutePoint, Site } from '../site/site.ts';
import { exact, type Interval, middle } from '../units/interval.ts';
import type { Certain } from './certain.ts';
import { usualDepthM, wireRadius } from './electrode-shape.ts';

/** A bare conductor in the soil: it leaks current along its way, though nobody counts it among the electrodes. */
export interface LeakingConductor {
  readonly id: string;
  /** One of which nobody says that it is bare is taken as bare, but not relied on; one that may not be there is not even that. */
  readonly certain: Certain;
  readonly radiusM: Interval;
  readonly depthM: Interval;
  /** Span by span (from clamp to clamp), the bodies of its pieces in order; null: its place is not known. */
  readonly spans: readonly (readonly Body[])[] | null;
}

/** A span is taken in pieces of about this length, so that its metal is not one potential, metres; and at most so many. */
const pieceM = 5;
const mostPieces = 6;

/** Conductors that are there, in soil, not insulated and of known thickness, by id. */
export function leakingConductors(site: Site, partOf: (id: string) => Part | undefined): readonly LeakingConductor[] {
  const placeOf = positionsOf(site, partOf).of;
  const wayOf = (point: PointRef): Way => wayOfPoint(point, partOf, placeOf);
  const ends = new Set(site.conductors.flatMap((c) => [c.from.part, c.to.part, ...c.passes.map((p) => p.at.part)]));
  return site.conductors
    .filter((c) => c.present !== 'no' && c.condition !== 'open' && c.wire !== null && c.wire.insulated !== 'yes')
    .flatMap((c) => {
      const depthM = depthOf(c);
      const radiusM = wireRadius(c.wire);
      if (depthM === null || radiusM === null) return [];
      // where other wires land on it, its spans are not known one by one
      const isTapped = ends.has(c.id) || c.splices.length > 0;
      const spans = isTapped ? null : spansOf(c, wayOf, middle(depthM)!, middle(radiusM));
      return [{ id: c.id, certain: certainOf(c), radiusM, depthM, spans }];
    })
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

function certainOf({ present, wire }: Conductor): Certain {
  if (present === 'unknown') return 'perhaps';
  return wire?.insulated === 'no' ? 'there' : 'likely';
}

/** null: not in soil. */
function depthOf(c: Conductor): Interval | null {
  if (c.buriedM === 'yes') return usualDepthM;
  if (c.buriedM === null || c.buriedM === 'no' || !(c.buriedM.high > 0)) return null;
  return Number.isFinite(c.buriedM.high) ? c.buriedM : exact(c.buriedM.low);
}

/** The points at which an end may land: one, or a whole route; [] where nobody knows. */
type Way = readonly Position[];

function spansOf(
  c: Conductor,
  wayOf: (point: PointRef) => Way,
  depthM: number,
  radiusM: number | null,
): readonly (readonly Body[])[] | null {
  if (radiusM === null) return null;
  const route = c.passes.length === 0 ? routeOf(c.route) : [];
  if (route.length > 0) return [piecesOf(route, depthM, radiusM)];
  const ways = [c.from, ...c.passes.map((p) => p.at), c.to].map(wayOf);
  if (ways.some((way) => way.length === 0)) return null;
  const spans = ways.slice(1).map((to, i) => piecesOf(nearestPair(ways[i]!, to), depthM, radiusM));
  return spans.some((pieces) => pieces.length === 0) ? null : spans;
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
  if (part?.section === 'electrodes' && part.route !== null) return isAlong ? [] : routeOf(part.route);
  if (isAlong && part?.section !== 'supports') return [];
  const place = placeOf(point.part);
  return place === null ? [] : [place];
}

function routeOf(route: readonly RoutePoint[] | null): Way {
  const points = (route ?? []).map((p) => p.position);
  return points.length < 2 || points.some((p) => p === null) ? [] : (points as readonly Position[]);
}

/** Where two ways come nearest to each other: at a corner or end of one of them. */
function nearestPair(a: Way, b: Way): readonly [Position, Position] {
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

/** The way cut into pieces of equal length, each a body; [] where it is too short to be one. */
function piecesOf(way: readonly Position[], depthM: number, radiusM: number): readonly Body[] {
  const legs = way.slice(1).flatMap((to, i) => {
    const from = way[i]!;
    const lengthM = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return lengthM < 4 * radiusM ? [] : [{ from, to, lengthM }];
  });
  const perLeg = legs.length > 2 ? 1 : mostPieces;
  return legs.flatMap(({ from, to, lengthM }) => {
    const count = Math.min(perLeg, Math.max(1, Math.round(lengthM / pieceM)));
    return Array.from({ length: count }, (_, k): Body => {
      const at = (share: number): SoilPoint => [
        from[0] + share * (to[0] - from[0]),
        from[1] + share * (to[1] - from[1]),
        Math.max(depthM, radiusM),
      ];
      return { runs: [{ from: at(k / count), to: at((k + 1) / count), radiusM, sheath: null }] };
    });
  });
}
