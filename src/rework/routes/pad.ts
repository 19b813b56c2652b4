import { distanceM, type Point } from './point.ts';

/** One side of a pad: outward unit normal, and how far along it the side lies; inside is normal · p < reachM. */
export interface Side {
  readonly east: number;
  readonly north: number;
  readonly reachM: number;
}

/** The ground within a clearance of one straight piece of an outline, as a convex shape with eight corners. */
export interface Pad {
  /** Which thing of the ground it belongs to. */
  readonly thing: number;
  /** Counterclockwise. */
  readonly corners: readonly Point[];
  readonly sides: readonly Side[];
  readonly low: Point;
  readonly high: Point;
}

const EIGHTH = Math.PI / 4;
/** Corners of an octagon round a circle lie this much farther out than the circle. */
const CORNER_REACH = 1 / Math.cos(EIGHTH / 2);

/**
 * The straight piece from a to b with a clearance round it: sides parallel to it at the clearance, each end closed by half
 * an octagon drawn round the half circle. So a route is nowhere nearer than the clearance, and at a corner it is at most
 * 8.3 % of the clearance farther out than it need be. It turns with the piece: no direction of the map is better than
 * another. a and b may be the same place.
 */
export function padAround(thing: number, a: Point, b: Point, clearanceM: number): Pad {
  const lengthM = distanceM(a, b);
  const [east, north] = lengthM > 0 ? [(b[0] - a[0]) / lengthM, (b[1] - a[1]) / lengthM] : [1, 0];
  const turned = (angle: number): Point => {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return [east * c - north * s, east * s + north * c];
  };
  const corners = [-3, -1, 1, 3, 5, 7, 9, 11].map((k): Point => {
    const [e, n] = turned((k * EIGHTH) / 2);
    const end = k < 4 ? b : a;
    return [end[0] + e * clearanceM * CORNER_REACH, end[1] + n * clearanceM * CORNER_REACH];
  });
  const sides = [-1, 0, 1, 2, 3, 4, 5, 6].map((k): Side => {
    const [e, n] = turned(k * EIGHTH);
    const end = k < 3 ? b : a;
    return { east: e, north: n, reachM: e * end[0] + n * end[1] + clearanceM };
  });
  const range = (axis: 0 | 1, pick: (...all: number[]) => number) => pick(...corners.map((c) => c[axis]));
  const low: Point = [range(0, Math.min), range(1, Math.min)];
  const high: Point = [range(0, Math.max), range(1, Math.max)];
  return { thing, corners, sides, low, high };
}

/** Whether p lies inside a pad by more than the tolerance. */
export function isInPad(pad: Pad, p: Point, toleranceM: number): boolean {
  return pad.sides.every((s) => s.east * p[0] + s.north * p[1] - s.reachM < -toleranceM);
}

/** Shares of the straight piece from a to b between which it runs inside a pad; null: nowhere. Along the outline is outside. */
export function stretchInPad(pad: Pad, a: Point, b: Point, toleranceM: number): readonly [number, number] | null {
  let from = 0;
  let to = 1;
  for (const { east, north, reachM } of pad.sides) {
    const atA = east * a[0] + north * a[1] - reachM + toleranceM;
    const atB = east * b[0] + north * b[1] - reachM + toleranceM;
    if (atA >= 0 && atB >= 0) return null;
    if (atA >= 0) from = Math.max(from, atA / (atA - atB));
    else if (atB > 0) to = Math.min(to, atA / (atA - atB));
    if (from >= to) return null;
  }
  return [from, to];
}
