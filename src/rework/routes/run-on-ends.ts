import type { Area } from './ground.ts';
import { between, distanceM, nearestShare, type Point } from './point.ts';
import { windsRound } from './winds-round.ts';

/** A run, and which of its ends go on for nobody knows how far. */
export interface RunOn {
  readonly routeM: readonly Point[];
  readonly runsOn: readonly [first: boolean, last: boolean];
}

/**
 * A run of which both ends that lie at no area are drawn straight on, past all places. An end lies at an area when it is
 * inside or at most `atM` from its outline. A single place stays as it is.
 */
export function runOnEnds(
  routeM: readonly Point[],
  areas: readonly Area[],
  places: readonly Point[],
  atM: number,
): RunOn {
  const run = routeM.filter((p, i) => i === 0 || distanceM(p, routeM[i - 1]!) > 0);
  if (run.length < 2) return { routeM: run, runsOn: [false, false] };
  const ends = (p: Point) => areas.some((a) => windsRound(a.cornersM, p) || outlineDistanceM(a.cornersM, p) <= atM);
  const farM = 2 * places.reduce((most, p) => Math.max(most, distanceM(p, run[0]!)), distanceM(run[0]!, run.at(-1)!));
  const before = ends(run[0]!) ? [] : [onFrom(run[1]!, run[0]!, farM)];
  const after = ends(run.at(-1)!) ? [] : [onFrom(run.at(-2)!, run.at(-1)!, farM)];
  return { routeM: [...before, ...run, ...after], runsOn: [before.length > 0, after.length > 0] };
}

function outlineDistanceM(corners: readonly Point[], p: Point): number {
  return corners.reduce((least, a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return Math.min(least, distanceM(p, between(a, b, nearestShare(p, a, b))));
  }, Infinity);
}

function onFrom(from: Point, end: Point, byM: number): Point {
  return between(from, end, 1 + byM / distanceM(from, end));
}
