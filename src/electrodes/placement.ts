import type { Run, SoilPoint } from './body.ts';

/** A point of a route, metres; without its own depth it lies as deep as the electrode. */
export type RoutePlace = readonly [eastM: number, northM: number, depthM?: number];

/** Where an electrode is. */
export interface Placement {
  /** Its centre; of a rod driven aslant, its upper end. */
  readonly at: readonly [eastM: number, northM: number];
  /** Which way it lies (or a slanting rod leads): degrees from east towards north; default 0. */
  readonly directionDeg?: number;
  /** The way that a wire, strap, pipe, ring or footing takes; wins over its length and over `at`. */
  readonly route?: readonly RoutePlace[] | null;
  /** Whether the route goes on from its last point to its first; a ring's always does. */
  readonly closed?: boolean;
}

/** Runs round the origin, turned and moved to their place. */
export function placedRuns(runs: readonly Run[], { at, directionDeg = 0 }: Placement): readonly Run[] {
  const angle = (directionDeg * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const place = ([eastM, northM, depthM]: SoilPoint): SoilPoint => [
    at[0] + cosine * eastM - sine * northM,
    at[1] + sine * eastM + cosine * northM,
    depthM,
  ];
  return runs.map((run) => ({ ...run, from: place(run.from), to: place(run.to) }));
}
