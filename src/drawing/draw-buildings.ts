import type { Study } from '../study/study.ts';
import type { PlanScale } from './plan-scale.ts';
import { crosses, overlaps, type Rect } from './rect.ts';
import { type Point, polygon, type Svg, text } from './svg.ts';
import { soft } from './symbols.ts';
import { textWidth } from './text-width.ts';

const size = 2.8;

interface Outline {
  readonly id: string;
  readonly points: readonly Point[];
}

/** What stands about on the plan before the buildings have their names. */
export interface Standing {
  readonly symbols: readonly Rect[];
  readonly runs: readonly (readonly [Point, Point])[];
}

/** Outlines of the buildings whose corners are known, each with its name where `buildingNames` found room. */
export function drawBuildings(study: Study, scale: PlanScale, names: readonly Rect[]): readonly Svg[] {
  return outlines(study, scale).flatMap(({ id, points }, i) => [
    polygon(points, { fill: '#f3f5f7', stroke: soft, 'stroke-width': 0.7 }),
    text(id, { x: names[i]!.x, y: names[i]!.y + size, 'font-size': size, 'font-style': 'italic', fill: soft }),
  ]);
}

/** Where each name stands, in the corner with the fewest symbols and runs, upper left first: no label may cover it. */
export function buildingNames(study: Study, scale: PlanScale, standing: Standing): readonly Rect[] {
  return outlines(study, scale).map((o) => {
    const corners = nameCorners(o);
    const crowds = corners.map((rect) => crowdIn(rect, standing));
    return corners[crowds.indexOf(Math.min(...crowds))]!;
  });
}

function nameCorners({ id, points }: Outline): readonly Rect[] {
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  const [width, height] = [textWidth(id, size), size + 0.8];
  const [left, right] = [Math.min(...xs) + 1.5, Math.max(...xs) - width - 1.5];
  const [top, bottom] = [Math.min(...ys) + 1.2, Math.max(...ys) - height - 1.2];
  const corners = [
    [left, top],
    [right, top],
    [left, bottom],
    [right, bottom],
  ] as const;
  return corners.map(([x, y]) => ({ x, y, width, height }));
}

/** A symbol hides more of a name than any run does. */
function crowdIn(rect: Rect, { symbols, runs }: Standing): number {
  const hidden = symbols.filter((s) => overlaps(s, rect)).length;
  return hidden * 100 + runs.filter(([a, b]) => crosses(rect, a, b)).length;
}

/** Walls as closed lines, which a label should rather not cover. */
export function buildingWalls(study: Study, scale: PlanScale): readonly (readonly Point[])[] {
  return outlines(study, scale).map(({ points }) => [...points, points[0]!]);
}

function outlines(study: Study, scale: PlanScale): readonly Outline[] {
  return study.buildings
    .filter((b) => b.cornersM.length > 2)
    .map((b) => ({ id: b.id, points: b.cornersM.map(([e, n]) => scale.toPaper([e, n])) }));
}
