import type { Facts } from '../facts/facts.ts';
import { type PartIndex, partIndex } from '../facts/part-index.ts';
import type { Part, PointRef, Position, RoutePoint, Stop } from '../site/site.ts';
import type { StudyPart } from './study.ts';

/** Every part as typed, with what a plan and a schedule need; in the order of the file's sections, then by id. */
export function partsOf({ site, bonding }: Pick<Facts, 'site' | 'bonding'>): readonly StudyPart[] {
  const index = partIndex(site);
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
    positionM: positionOf(p.id, index),
    routeM: routeOf(p, index),
    heightM: p.section === 'supports' ? p.heightM : null,
    typed: p.typed,
    group: bonding.groupOf.get(p.id) ?? null,
  }));
}

/** Its own place, else that of what it is on. */
function positionOf(id: string | null, index: PartIndex): Position | null {
  const seen = new Set<string>();
  for (let at = id; at !== null && !seen.has(at); ) {
    seen.add(at);
    const part = index.get(at);
    if (part?.position != null) return part.position;
    at = part?.on?.part ?? null;
  }
  return null;
}

/** Known points of a route in order; fewer than two say nothing. */
function routeOf(part: Part, index: PartIndex): readonly Position[] {
  const points = rawRoute(part, index).filter((p): p is Position => p !== null);
  return points.length < 2 ? [] : points;
}

function rawRoute(part: Part, index: PartIndex): readonly (Position | null)[] {
  if (part.section === 'lines') return part.path.map((stop) => ofStop(stop, index));
  if (part.section === 'conductors') {
    const typed = part.route?.map((p) => ofRoutePoint(p, index)) ?? part.passes.map((p) => ofPoint(p.at, index));
    return [ofPoint(part.from, index), ...typed, ofPoint(part.to, index)];
  }
  if (part.section === 'electrodes' || part.section === 'metalwork') {
    const route = (part.route ?? []).map((p) => ofRoutePoint(p, index));
    return part.section === 'electrodes' && part.closed === 'yes' && route.length > 2
      ? [...route, route[0] ?? null]
      : route;
  }
  return [];
}

function ofRoutePoint(p: RoutePoint, index: PartIndex): Position | null {
  return p.position ?? (p.part === null ? null : ofPoint(p.part, index));
}

function ofPoint(p: PointRef, index: PartIndex): Position | null {
  return positionOf(p.part, index);
}

function ofStop(stop: Stop, index: PartIndex): Position | null {
  if (stop.is === 'bend') return stop.position ?? (stop.at === null ? null : ofPoint(stop.at, index));
  return stop.is === 'part' || stop.is === 'bond' ? ofPoint(stop.at, index) : null;
}
