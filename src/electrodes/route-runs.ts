import type { Run, SoilPoint } from './body.ts';
import type { RoutePlace } from './placement.ts';
import type { Section } from './section.ts';

/** A run from each point of a route to the next, and from the last to the first of a closed one; a point typed twice is one. */
export function routeRuns(
  route: readonly RoutePlace[],
  { depthM, radiusM, sheath }: Section,
  isClosed: boolean,
): readonly Run[] {
  const points = route.map(([eastM, northM, ownM]): SoilPoint => [eastM, northM, ownM ?? depthM]);
  const ends = isClosed && points.length > 2 ? [...points.slice(1), points[0]!] : points.slice(1);
  return ends.flatMap((to, at) => {
    const from = points[at]!;
    return from.every((value, axis) => value === to[axis]) ? [] : [{ from, to, radiusM, sheath }];
  });
}
