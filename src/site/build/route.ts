import type { TypedRoutePoint } from '../format/routes.ts';
import type { RoutePoint } from '../site.ts';
import type { Places } from './places.ts';

/** A typed route with the positions of its points worked out. A point that names no part keeps only its position. */
export function routeOf(typed: readonly TypedRoutePoint[] | null, places: Places): readonly RoutePoint[] | null {
  if (typed === null) return null;
  return typed.map(({ placed, part }) => ({ position: places.position(placed), part }));
}
