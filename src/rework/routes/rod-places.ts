import type { Ground } from './ground.ts';
import { type Obstacles, obstaclesOf } from './obstacles.ts';
import { distanceM, type Point } from './point.ts';
import { waysOut } from './ways-out.ts';

/** What is asked: how many rods, how far apart, from where. */
export interface RodsWanted {
  /** The electrode that the new rods stand in line with. */
  readonly fromM: Point;
  readonly count: number;
  readonly spacingM: number;
  /** Electrodes that are there: no new rod comes nearer to them than the spacing. */
  readonly othersM: readonly Point[];
}

export interface RodPlaces {
  /** In the order in which they are joined; fewer than asked where there is no room. */
  readonly placesM: readonly Point[];
  /** For each place the number of the place that it is joined from, -1 for the electrode itself. */
  readonly joinedFrom: readonly number[];
}

/** Directions that are tried, every 7.5 degrees from east counterclockwise. */
const DIRECTIONS = 48;

/**
 * Where more rods go: at the spacing from an electrode, from each other and from those that are there, outside all
 * clearances, each joined to the one before by a straight wire that keeps them too. In one line if there is room (spread
 * out, each gains most), the line whose rods are farthest from the electrodes that are there; else as a tree, each new rod from
 * the first one that has room. An electrode inside a clearance is left first by the shortest way out. Deterministic.
 */
export function rodPlaces(ground: Ground, wanted: RodsWanted): RodPlaces {
  const { fromM, count, spacingM, othersM } = wanted;
  if (!(count > 0 && spacingM > 0) || ![...fromM, count, spacingM].every(Number.isFinite)) return none;
  const obstacles = obstaclesOf(ground, [fromM, ...othersM]);
  const starts = obstacles.isClear(fromM) ? [fromM] : waysOut(fromM, obstacles);
  const lines = starts.flatMap((start) => directions.map((d) => inLine(start, d, wanted, obstacles)));
  const whole = lines.filter((l) => l.length === Math.floor(count));
  if (whole.length === 0) return asTree(starts, wanted, obstacles);
  const best = whole.reduce((a, b) => (roomOf(b, othersM) > roomOf(a, othersM) + obstacles.sameM ? b : a));
  return { placesM: best, joinedFrom: best.map((_, i) => i - 1) };
}

const none: RodPlaces = { placesM: [], joinedFrom: [] };

const directions: readonly Point[] = Array.from({ length: DIRECTIONS }, (_, i): Point => {
  const angle = (2 * Math.PI * i) / DIRECTIONS;
  return [Math.cos(angle), Math.sin(angle)];
});

/** Rods in one direction, until one does not fit. */
function inLine(start: Point, direction: Point, wanted: RodsWanted, obstacles: Obstacles): readonly Point[] {
  const found: Point[] = [];
  for (let at = start; found.length < Math.floor(wanted.count); at = found.at(-1)!) {
    const next = nextFrom(at, direction, wanted.spacingM);
    if (!fits(at, next, found, wanted, obstacles)) break;
    found.push(next);
  }
  return found;
}

/** Rods one by one, each from the earliest place that has room beside it. */
function asTree(starts: readonly Point[], wanted: RodsWanted, obstacles: Obstacles): RodPlaces {
  const placesM: Point[] = [];
  const joinedFrom: number[] = [];
  for (let from = -1; from < placesM.length && placesM.length < Math.floor(wanted.count); from++) {
    for (const at of from < 0 ? starts : [placesM[from]!]) {
      for (const direction of directions) {
        const next = nextFrom(at, direction, wanted.spacingM);
        if (placesM.length === Math.floor(wanted.count) || !fits(at, next, placesM, wanted, obstacles)) continue;
        placesM.push(next);
        joinedFrom.push(from);
      }
    }
  }
  return { placesM, joinedFrom };
}

function nextFrom([east, north]: Point, [dE, dN]: Point, byM: number): Point {
  return [east + dE * byM, north + dN * byM];
}

/** Clear, joined clear, and at the spacing from all others; a hair less is the spacing too. */
function fits(from: Point, at: Point, found: readonly Point[], wanted: RodsWanted, obstacles: Obstacles): boolean {
  const leastM = wanted.spacingM * (1 - 1e-9) - obstacles.sameM;
  return (
    obstacles.isClear(at) &&
    obstacles.sees(from, at) &&
    [wanted.fromM, ...wanted.othersM, ...found].every((p) => distanceM(p, at) >= leastM)
  );
}

/** How far the nearest of the electrodes that are there is from any new rod; Infinity where there is none. */
function roomOf(rods: readonly Point[], others: readonly Point[]): number {
  return rods.reduce((least, rod) => others.reduce((l, o) => Math.min(l, distanceM(rod, o)), least), Infinity);
}
