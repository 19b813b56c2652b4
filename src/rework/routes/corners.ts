import type { Obstacles } from './obstacles.ts';
import { isInPad, type Pad } from './pad.ts';
import { distanceM, type Point } from './point.ts';

/** The directions that lead from a corner into its pad: from `next` counterclockwise to `before`, both unit vectors. */
export interface Cone {
  readonly next: Point;
  readonly before: Point;
}

/** A place where a route may bend to go round things. */
export interface Corner {
  readonly at: Point;
  /** Which things it belongs to, in order. */
  readonly things: readonly number[];
  readonly cones: readonly Cone[];
}

/**
 * Corners of clearances that lie clear of all others. A shortest route round convex shapes bends nowhere else; where two
 * shapes cross, the outline turns the other way and no shortest route bends.
 */
export function cornersOf(obstacles: Obstacles): readonly Corner[] {
  const { pads, toleranceM, sameM, isClear, closedEnds } = obstacles;
  const ofThing = new Map<number, Pad[]>();
  for (const pad of pads) ofThing.set(pad.thing, [...(ofThing.get(pad.thing) ?? []), pad]);
  const found = new Map<string, { at: Point; things: Set<number>; cones: Cone[] }>();
  for (const pad of pads) {
    const own = ofThing.get(pad.thing)!;
    pad.corners.forEach((at, i) => {
      if (closedEnds.some((end) => distanceM(end.at, at) <= end.withinM)) return;
      if (own.some((other) => isOnSide(other, at, toleranceM, sameM)) || !isClear(at)) return;
      const key = at.map((x) => Math.round(x / sameM)).join();
      const same = found.get(key) ?? { at, things: new Set<number>(), cones: [] };
      same.things.add(pad.thing);
      same.cones.push(coneAt(pad, i));
      found.set(key, same);
    });
  }
  return [...found.values()].map((c) => ({ at: c.at, things: [...c.things].sort((a, b) => a - b), cones: c.cones }));
}

/** On the outline of another pad of the same thing, away from its corners: nothing bends there. */
function isOnSide(pad: Pad, p: Point, toleranceM: number, sameM: number): boolean {
  const { low, high } = pad;
  // Most pads are far off: their box says so at once.
  if (p[0] < low[0] - sameM || p[0] > high[0] + sameM || p[1] < low[1] - sameM || p[1] > high[1] + sameM) return false;
  return isInPad(pad, p, -10 * toleranceM) && !pad.corners.some((c) => distanceM(c, p) <= sameM);
}

function coneAt({ corners }: Pad, i: number): Cone {
  const [at, next, before] = [corners[i]!, corners[(i + 1) % corners.length]!, corners.at(i - 1)!];
  return { next: towards(at, next), before: towards(at, before) };
}

function towards(a: Point, b: Point): Point {
  const lengthM = distanceM(a, b);
  return lengthM > 0 ? [(b[0] - a[0]) / lengthM, (b[1] - a[1]) / lengthM] : [0, 0];
}

/** Directions closer than this to the edge of a cone, as a share of what is looked at, run along it. */
const ALONG = 1e-9;

/**
 * Whether a straight piece between a corner and another place may be part of a shortest route that bends at the corner: it
 * touches the corner of at least one pad without pointing into it forwards or backwards.
 */
export function touches(cones: readonly Cone[], at: Point, other: Point): boolean {
  if (cones.length === 0) return true;
  const east = other[0] - at[0];
  const north = other[1] - at[1];
  const along = ALONG * (Math.abs(east) + Math.abs(north));
  for (const { next, before } of cones) {
    const left = next[0] * north - next[1] * east;
    const right = east * before[1] - north * before[0];
    if (!(left > along && right > along) && !(left < -along && right < -along)) return true;
  }
  return false;
}
