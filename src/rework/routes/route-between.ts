import type { Study } from '../../study/study.ts';
import type { Point } from './point.ts';
import { type Leg, type RouteEnd, shortestRoutes } from './shortest-routes.ts';
import { onGround, siteObstacles } from './site-obstacles.ts';

export type { Leg } from './shortest-routes.ts';

/** A route that joins parts of a site. */
export interface SiteRoute {
  readonly lengthM: number;
  /** Leg by leg: east, north in metres. */
  readonly routeM: readonly (readonly Point[])[];
  readonly legs: readonly Leg[];
  /** Ids of what it goes round, in order. */
  readonly around: readonly string[];
  /** How much of it lies in trenches that are there. */
  readonly inTrenchM: number;
}

/** Why there is no route, and of which ids that is so. */
export interface NoRoute {
  readonly none: 'too few parts' | 'no places' | 'shut in' | 'no way';
  readonly at: readonly string[];
}

/**
 * The shortest sensible route in the ground that joins two or more parts of a site, round buildings and away from gas and
 * pools (`siteObstacles`). Lengths on the flat in metres, without what a conductor needs to come up to its ends. A part on
 * a wall, or inside, is reached by the shortest way out of it. A point of a part (`tower@base`) is where the part is; a
 * buried wire is met anywhere along it. `none` says why there is no route: an id without a place (`no places`), one that
 * cannot be left (`shut in`), no way that keeps all clearances (`no way`).
 */
export function routeBetween(study: Study, ids: readonly string[]): SiteRoute | NoRoute {
  const wanted = [...new Set(ids)];
  if (wanted.length < 2) return { none: 'too few parts', at: wanted };
  const ends = wanted.map((id) => ({ id, placesM: placesOf(study, id) }));
  return routeOf(study, ends);
}

/** As `routeBetween`, from a place on the ground where nothing is yet. */
export function routeFromPlace(study: Study, placeM: Point, id: string): SiteRoute | NoRoute {
  // no part has an empty id
  return routeOf(study, [
    { id: '', placesM: [placeM] },
    { id, placesM: placesOf(study, id) },
  ]);
}

function routeOf(study: Study, ends: readonly RouteEnd[]): SiteRoute | NoRoute {
  const nowhere = ends.filter((e) => e.placesM.length === 0).map((e) => e.id);
  if (nowhere.length > 0) return { none: 'no places', at: nowhere };
  const found = shortestRoutes(siteObstacles(study), ends);
  if (found.none !== null) return { none: found.none, at: found.at };
  const { lengthM, legs, around, inTrenchM } = found;
  return { lengthM, routeM: legs.map((leg) => leg.routeM), legs, around, inTrenchM };
}

/** Where a part is: its place, or the run of a buried wire; [] where nobody knows. */
function placesOf(study: Study, id: string): readonly Point[] {
  const own = study.parts.find((p) => p.id === id);
  const part = own ?? study.parts.find((p) => p.id === id.replace(/[@.:].*$/, ''));
  if (part === undefined) return [];
  if (part.positionM !== null) return [onGround(part.positionM)];
  return part.section === 'electrodes' || part.section === 'metalwork' ? part.routeM.map(onGround) : [];
}
