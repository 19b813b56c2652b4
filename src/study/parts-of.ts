import type { Facts } from '../facts/facts.ts';
import { partIndex } from '../facts/part-index.ts';
import { type Positions, positionsOf } from '../site/positions-of.ts';
import type { Part, PointRef, Position, RoutePoint, Stop } from '../site/site.ts';
import type { StudyPart } from './study.ts';

/** Every part as typed, with what a plan and a schedule need; in the order of the file's sections, then by id. */
export function partsOf({ site, bonding }: Pick<Facts, 'site' | 'bonding'>): readonly StudyPart[] {
  const index = partIndex(site);
  const positions = positionsOf(site, index.get);
  return index.all.map((p) => ({
    id: p.id,
    section: p.section,
    kind: p.kind,
    present: p.present,
    known: p.known,
    condition: p.condition,
    where: index.whereOf(p.id),
    on: p.on?.text ?? null,
    place: p.place,
    owner: p.owner,
    count: p.count,
    note: p.note,
    photos: p.photo,
    positionM: positions.of(p.id),
    routeM: routeOf(p, positions),
    heightM: p.section === 'supports' ? p.heightM : null,
    typed: p.typed,
    group: bonding.groupOf.get(p.id) ?? null,
  }));
}

/** Known points of a route in order; fewer than two say nothing. */
function routeOf(part: Part, positions: Positions): readonly Position[] {
  const points = rawRoute(part, positions).filter((p): p is Position => p !== null);
  return points.length < 2 ? [] : points;
}

function rawRoute(part: Part, positions: Positions): readonly (Position | null)[] {
  if (part.section === 'lines') return part.path.map((stop) => ofStop(stop, positions));
  if (part.section === 'conductors') {
    const typed =
      part.route?.map((p) => ofRoutePoint(p, positions)) ?? part.passes.map((p) => ofPoint(p.at, positions));
    return [ofPoint(part.from, positions), ...typed, ofPoint(part.to, positions)];
  }
  if (part.section === 'electrodes' || part.section === 'metalwork') {
    const route = (part.route ?? []).map((p) => ofRoutePoint(p, positions));
    return part.section === 'electrodes' && part.closed === 'yes' && route.length > 2
      ? [...route, route[0] ?? null]
      : route;
  }
  return [];
}

function ofRoutePoint(p: RoutePoint, positions: Positions): Position | null {
  return p.position ?? (p.part === null ? null : ofPoint(p.part, positions));
}

function ofPoint(p: PointRef, positions: Positions): Position | null {
  return positions.of(p.part);
}

function ofStop(stop: Stop, positions: Positions): Position | null {
  if (stop.is === 'bend') return stop.position ?? (stop.at === null ? null : ofPoint(stop.at, positions));
  return stop.is === 'part' || stop.is === 'bond' ? ofPoint(stop.at, positions) : null;
}
