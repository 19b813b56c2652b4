import type { StudyPart } from '../../study/study.ts';

/** A place seen from above: east, north, metres. */
export type Spot = readonly [number, number];

/** Places at which a part can be met: its own, and the points of its route. */
export function spotsOf(part: StudyPart | undefined): readonly Spot[] {
  if (part === undefined) return [];
  if (part.routeM.length > 0) return part.routeM.map(([east, north]) => [east, north]);
  return part.positionM === null ? [] : [[part.positionM[0], part.positionM[1]]];
}

export function apartM([aE, aN]: Spot, [bE, bN]: Spot): number {
  return Math.hypot(bE - aE, bN - aN);
}
