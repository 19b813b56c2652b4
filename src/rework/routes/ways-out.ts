import { crossing, entersThing } from './enters-thing.ts';
import type { Obstacles } from './obstacles.ts';
import type { Pad } from './pad.ts';
import { between, distanceM, nearestShare, type Point } from './point.ts';

/** This many pads, nearest first, are asked where their outlines cross. */
const NEAR_PADS = 60;
/** Ways out that are longer than the shortest by this share of it are as short. */
const AS_SHORT = 1e-6;

/**
 * Where a place within a clearance or inside a building is left from: the nearest clear places that a straight piece reaches
 * without crossing a wall (other than outwards, of the building that it is in) or a pipe. Several where they are equally
 * near, as at a corner of a building; [] where the place cannot be left.
 */
export function waysOut(from: Point, obstacles: Obstacles): readonly Point[] {
  const pads = [...obstacles.pads].sort((a, b) => gapM(a, from) - gapM(b, from));
  const all = [...pads.flatMap((p) => feet(p, from)), ...crossingsOf(pads.slice(0, NEAR_PADS)), ...cornersOfAll(pads)];
  const byDistance = all.map((at) => ({ at, farM: distanceM(at, from) })).sort(inOrder);
  const found: Point[] = [];
  let mostM = Infinity;
  for (const { at, farM } of byDistance) {
    if (farM > mostM) break;
    if (found.some((p) => distanceM(p, at) <= obstacles.sameM)) continue;
    if (!obstacles.isClear(at) || !leadsOut(from, at, obstacles)) continue;
    found.push(at);
    if (mostM === Infinity) mostM = farM * (1 + AS_SHORT) + 10 * obstacles.toleranceM;
  }
  return found;
}

interface Found {
  readonly at: Point;
  readonly farM: number;
}

function inOrder(a: Found, b: Found): number {
  return a.farM - b.farM || a.at[0] - b.at[0] || a.at[1] - b.at[1];
}

/** How far p is from the box of a pad. */
function gapM({ low, high }: Pad, p: Point): number {
  return Math.hypot(
    ...[0, 1].map((axis) => Math.max(low[axis as 0 | 1] - p[axis as 0 | 1], 0, p[axis as 0 | 1] - high[axis as 0 | 1])),
  );
}

/** The nearest place of each side of a pad. */
function feet(pad: Pad, p: Point): readonly Point[] {
  return pad.corners.map((a, i) => {
    const b = pad.corners[(i + 1) % pad.corners.length]!;
    return between(a, b, nearestShare(p, a, b));
  });
}

const cornersOfAll = (pads: readonly Pad[]): readonly Point[] => pads.flatMap((p) => p.corners);

/** Where outlines of pads cross each other. */
function crossingsOf(pads: readonly Pad[]): readonly Point[] {
  const found: Point[] = [];
  pads.forEach((a, i) => {
    for (const b of pads.slice(i + 1)) {
      if (a.high[0] < b.low[0] || b.high[0] < a.low[0] || a.high[1] < b.low[1] || b.high[1] < a.low[1]) continue;
      for (const s of sidesOf(a)) {
        for (const t of sidesOf(b)) {
          const at = crossing(s, t);
          if (at !== null) found.push(at);
        }
      }
    }
  });
  return found;
}

type Piece = readonly [Point, Point];

const sidesOf = ({ corners }: Pad): readonly Piece[] =>
  corners.map((a, i): Piece => [a, corners[(i + 1) % corners.length]!]);

/** A wall is crossed outwards only, by what is inside it; the metal of a pipe is never crossed. */
function leadsOut(from: Point, to: Point, obstacles: Obstacles): boolean {
  const { things, isInside, sameM } = obstacles;
  const lengthM = distanceM(from, to);
  if (lengthM === 0) return true;
  // What stands on a pipe to the digit does not cross it by leaving.
  const start = between(from, to, Math.min(1, sameM / lengthM));
  return things.every((t, i) => (t.kind === 'area' && isInside(from, i)) || !entersThing(start, to, i, obstacles));
}
