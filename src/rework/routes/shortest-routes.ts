import type { Ground } from './ground.ts';
import { obstaclesOf } from './obstacles.ts';
import { distanceM, type Point } from './point.ts';

/** What a route begins or ends at: a place, or a run that may be met anywhere along it. */
export interface RouteEnd {
  readonly id: string;
  readonly placesM: readonly Point[];
}

export interface Leg {
  readonly from: string;
  readonly to: string;
  readonly routeM: readonly Point[];
  readonly lengthM: number;
  readonly inTrenchM: number;
}

export interface FoundRoute {
  readonly none: null;
  readonly lengthM: number;
  readonly legs: readonly Leg[];
  readonly around: readonly string[];
  readonly inTrenchM: number;
}

export interface NoWay {
  readonly none: 'shut in' | 'no way';
  readonly at: readonly string[];
}

/**
 * A route that joins all ends in the order given, straight from each to the next; `no way` where something is in the way.
 */
export function shortestRoutes(ground: Ground, ends: readonly RouteEnd[]): FoundRoute | NoWay {
  const obstacles = obstaclesOf(
    ground,
    ends.flatMap((e) => e.placesM),
  );
  const legs = ends.slice(1).map((end, i): Leg => {
    const [a, b] = [ends[i]!, end];
    const routeM = [a.placesM[0]!, b.placesM[0]!];
    return { from: a.id, to: b.id, routeM, lengthM: distanceM(routeM[0]!, routeM[1]!), inTrenchM: 0 };
  });
  const blocked = legs.filter((l) => !obstacles.sees(l.routeM[0]!, l.routeM[1]!));
  if (blocked.length > 0) return { none: 'no way', at: blocked.map((l) => l.to) };
  return { none: null, lengthM: legs.reduce((sum, l) => sum + l.lengthM, 0), legs, around: [], inTrenchM: 0 };
}
