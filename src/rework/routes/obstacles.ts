import { byCodeUnit } from '../../units/by-code-unit.ts';
import type { Ground } from './ground.ts';
import { isInPad, type Pad, padAround, stretchInPad } from './pad.ts';
import { padCells } from './pad-cells.ts';
import { between, distanceM, nearestShare, type Point } from './point.ts';
import { windsRound } from './winds-round.ts';

/** One thing that routes keep away from. */
export interface Thing {
  readonly id: string;
  readonly kind: 'area' | 'barrier';
  /** Its own outline or run, as straight pieces; of an area all round. */
  readonly pieces: readonly (readonly [Point, Point])[];
  /** Corners of an area; [] for a barrier. */
  readonly cornersM: readonly Point[];
}

/** What is in the way on the ground. */
export interface Obstacles {
  /** A place is in a clearance only when it is deeper in than this; metres. */
  readonly toleranceM: number;
  /** Places nearer to each other than this are one. */
  readonly sameM: number;
  readonly things: readonly Thing[];
  readonly pads: readonly Pad[];
  /** Ends that no route goes round: a place, and how far about it no route bends. */
  readonly closedEnds: readonly { readonly at: Point; readonly withinM: number }[];
  /** Whether p lies outside every thing and its clearance; the edge of a clearance is outside. */
  readonly isClear: (p: Point) => boolean;
  /** Whether the straight piece from a to b keeps the clearance of all things, or of all but some. */
  readonly sees: (a: Point, b: Point, but?: ReadonlySet<number>) => boolean;
  /** Shares of a straight piece between which it lies in a clearance, one for each pad; their ends are still clear. */
  readonly stretches: (a: Point, b: Point) => readonly (readonly [number, number])[];
  /** Things whose clearance or inside p lies in. */
  readonly thingsAt: (p: Point) => ReadonlySet<number>;
  /** Whether p lies inside the outline of a thing itself; on the outline is outside. */
  readonly isInside: (p: Point, thing: number) => boolean;
}

/** Shares of the ground's extent: what counts as on an edge, and what as one place; far under the least clearance. */
const ON_EDGE = 1e-9;
const SAME_PLACE = 2e-8;
/** A clearance of nothing is taken as this share of the extent, so that an outline has two sides. */
const LEAST_CLEARANCE = 1e-6;

/**
 * What is in the way, ready to be asked. A clearance of 0 or less is taken as a millionth of the extent of all that is
 * there. `places` are those that routes begin and end at; they count for the extent.
 */
export function obstaclesOf(ground: Ground, places: readonly Point[]): Obstacles {
  const shapes = shapesOf(ground);
  const trenches = ground.trenches.flatMap((t) => t.routeM).filter(isPlace);
  const extentM = extentOf([...shapes.flatMap((s) => s.points), ...trenches, ...places]);
  const toleranceM = extentM * ON_EDGE;
  const things = shapes.map((s): Thing => thingOf(s.id, s.kind, s.points));
  const pads = things.flatMap((t, i) => {
    const clearanceM = Math.max(shapes[i]!.clearanceM, extentM * LEAST_CLEARANCE);
    return t.pieces.map(([a, b]) => padAround(i, a, b, clearanceM));
  });
  const cells = padCells(pads);
  const boxes = things.map((t) => boxOf(t.cornersM));
  const isInside = (p: Point, thing: number) =>
    isInBox(p, boxes[thing]!) &&
    windsRound(things[thing]!.cornersM, p) &&
    !things[thing]!.pieces.some(([a, b]) => distanceM(p, between(a, b, nearestShare(p, a, b))) <= toleranceM);
  const thingsAt = (p: Point): ReadonlySet<number> => {
    const found = new Set<number>();
    cells.some(p, p, (pad) => {
      if (isInPad(pad, p, toleranceM)) found.add(pad.thing);
      return false;
    });
    things.forEach((_, i) => {
      if (isInside(p, i)) found.add(i);
    });
    return found;
  };
  return {
    toleranceM,
    sameM: extentM * SAME_PLACE,
    things,
    pads,
    closedEnds: closedEndsOf(ground),
    isClear: (p) => !cells.some(p, p, (pad) => isInPad(pad, p, toleranceM)) && !things.some((_, i) => isInside(p, i)),
    sees: (a, b, but) =>
      !cells.some(a, b, (pad) => but?.has(pad.thing) !== true && stretchInPad(pad, a, b, toleranceM) !== null),
    stretches: (a, b) => {
      const found: (readonly [number, number])[] = [];
      cells.some(a, b, (pad) => {
        const stretch = stretchInPad(pad, a, b, toleranceM / 2);
        if (stretch !== null) found.push(stretch);
        return false;
      });
      return found;
    },
    thingsAt,
    isInside,
  };
}

interface Shape {
  readonly id: string;
  readonly kind: Thing['kind'];
  readonly points: readonly Point[];
  readonly clearanceM: number;
}

/** Corners of an octagon round an end lie within 1.09 clearances of it. */
function closedEndsOf({ barriers }: Ground): Obstacles['closedEnds'] {
  return barriers.flatMap(({ routeM, clearanceM, runsOn = [false, false] }) => {
    const ends = [routeM[0], routeM.at(-1)].filter((p, i) => p !== undefined && runsOn[i]);
    return ends.map((at) => ({ at: at!, withinM: 1.09 * clearanceM }));
  });
}

/** Areas, then barriers, each in order of id; those without a usable point are nowhere. */
function shapesOf({ areas, barriers }: Ground): readonly Shape[] {
  const all: Shape[] = [
    ...areas.map((a): Shape => ({ ...a, kind: 'area', points: a.cornersM.filter(isPlace) })),
    ...barriers.map((b): Shape => ({ ...b, kind: 'barrier', points: b.routeM.filter(isPlace) })),
  ];
  return all.filter((s) => s.points.length > 0).sort((a, b) => byCodeUnit(a.kind, b.kind) || byCodeUnit(a.id, b.id));
}

/** Whether both coordinates are finite numbers. */
export function isPlace(p: Point): boolean {
  return Number.isFinite(p[0]) && Number.isFinite(p[1]);
}

function thingOf(id: string, kind: Thing['kind'], points: readonly Point[]): Thing {
  const run = kind === 'area' ? [...points, points[0]!] : points;
  const pieces = run.slice(1).map((p, i): readonly [Point, Point] => [run[i]!, p]);
  const first = points[0]!;
  return { id, kind, pieces: pieces.length > 0 ? pieces : [[first, first]], cornersM: kind === 'area' ? points : [] };
}

type Box = readonly [west: number, south: number, east: number, north: number];

function boxOf(points: readonly Point[]): Box {
  let box: Box = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [e, n] of points) {
    box = [Math.min(box[0], e), Math.min(box[1], n), Math.max(box[2], e), Math.max(box[3], n)];
  }
  return box;
}

function isInBox([e, n]: Point, [west, south, east, north]: Box): boolean {
  return e >= west && e <= east && n >= south && n <= north;
}

/** Longest way across all that is there, and not less than what the digits of the coordinates can tell apart. */
function extentOf(points: readonly Point[]): number {
  const [west, south, east, north] = boxOf(points);
  if (!(east >= west)) return 1;
  const farthest = Math.max(Math.abs(west), Math.abs(south), Math.abs(east), Math.abs(north));
  return Math.max(Math.hypot(east - west, north - south), farthest * 1e-6, Number.MIN_VALUE * 1e20);
}
