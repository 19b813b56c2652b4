import { crosses, inside, nearestOn, overlaps, type Rect, rectAbout } from './rect.ts';
import type { Point } from './svg.ts';

/** A label that wants to stand near a point. */
export interface Wanted {
  readonly at: Point;
  readonly width: number;
  readonly height: number;
}

export interface Obstacles {
  readonly sheet: Rect;
  /** Nothing may stand here: symbols, the north arrow. */
  readonly blocked: readonly Rect[];
  /** A label should rather not stand on these. */
  readonly lines: readonly (readonly [Point, Point])[];
}

export interface PlacedLabel {
  readonly rect: Rect;
  /** From the label to its point. */
  readonly leader: readonly [Point, Point];
  readonly distanceMm: number;
}

const distances = [2.6, 4.5, 7, 10, 14, 19, 25, 32, 40, 50, 62, 76, 92, 110];
const directions = Array.from({ length: 16 }, (_, i) => (i * Math.PI) / 8);
const nearMm = 3;
const lineCost = 4;
const leaderCost = 6;
const crossingCost = 60;

/**
 * One place for each label, greedily, the tallest first: as near to its point as it can be with no overlap of labels,
 * symbols, leaders' ends or the edge, preferring places that cover few lines. null where there is no room at all.
 */
export function placeLabels(wanted: readonly Wanted[], obstacles: Obstacles): readonly (PlacedLabel | null)[] {
  const order = wanted.map((w, i) => ({ w, i })).sort((a, b) => b.w.height - a.w.height || a.i - b.i);
  const taken: PlacedLabel[] = [];
  const places: (PlacedLabel | null)[] = wanted.map(() => null);
  for (const { w, i } of order) {
    const best = bestPlace(w, obstacles, taken);
    if (best !== null) taken.push(best);
    places[i] = best;
  }
  return places;
}

function bestPlace(w: Wanted, obstacles: Obstacles, taken: readonly PlacedLabel[]): PlacedLabel | null {
  let best: { readonly place: PlacedLabel; readonly cost: number } | null = null;
  for (const distance of distances) {
    if (best !== null && distance >= best.cost) break;
    for (const [turn, direction] of directions.entries()) {
      const place = placeAt(w, distance, direction);
      if (!isFree(place, obstacles, taken)) continue;
      const cost = distance + turn * 0.01 + costOf(place, obstacles, taken);
      if (best === null || cost < best.cost) best = { place, cost };
    }
  }
  return best?.place ?? null;
}

/** The nearest edge of the label is `distance` away from the point, in the direction given. */
function placeAt(w: Wanted, distance: number, direction: number): PlacedLabel {
  const [dx, dy] = [Math.cos(direction), Math.sin(direction)];
  const reach = distance + (Math.abs(dx) * w.width + Math.abs(dy) * w.height) / 2;
  const rect = rectAbout([w.at[0] + dx * reach, w.at[1] + dy * reach], w.width, w.height);
  return { rect, leader: [nearestOn(rect, w.at), w.at], distanceMm: distance };
}

function isFree({ rect }: PlacedLabel, { sheet, blocked }: Obstacles, taken: readonly PlacedLabel[]): boolean {
  if (!inside(rect, sheet) || blocked.some((b) => overlaps(rect, b))) return false;
  return !taken.some((t) => overlaps(rect, t.rect) || crosses(rect, ...t.leader));
}

function costOf(
  { rect, leader, distanceMm }: PlacedLabel,
  obstacles: Obstacles,
  taken: readonly PlacedLabel[],
): number {
  const under = obstacles.lines.filter(([a, b]) => crosses(rect, a, b)).length;
  const over = taken.filter((t) => crosses(t.rect, ...leader)).length;
  return under * lineCost + over * crossingCost + (distanceMm > nearMm ? leaderCost : 0);
}
