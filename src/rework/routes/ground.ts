import type { Point } from './point.ts';

/** A closed shape that no route may enter, such as a building; corners in order, the last joined to the first. */
export interface Area {
  readonly id: string;
  readonly cornersM: readonly Point[];
  /** How far a route keeps away from its outline, metres. */
  readonly clearanceM: number;
}

/** An open run that no route may cross, such as a pipe; a single point is a post. */
export interface Barrier {
  readonly id: string;
  readonly routeM: readonly Point[];
  readonly clearanceM: number;
  /** Whether it goes on beyond its first place, its last: no route goes round there. Left out: it ends at both. */
  readonly runsOn?: readonly [first: boolean, last: boolean];
}

/** A run along which a metre of route counts less than a metre: a trench that is there, or a buried wire in it. */
export interface Trench {
  readonly id: string;
  readonly routeM: readonly Point[];
  /** What a metre along it counts, from 0 (nothing) to 1 (as any other metre). */
  readonly factor: number;
}

/** The ground that routes run in: plain shapes. What has a coordinate that is no finite number is left out. */
export interface Ground {
  readonly areas: readonly Area[];
  readonly barriers: readonly Barrier[];
  readonly trenches: readonly Trench[];
}
