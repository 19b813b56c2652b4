import type { Study } from '../study/study.ts';
import type { PlanScale } from './plan-scale.ts';
import type { Rect } from './rect.ts';
import { type Point, polygon, type Svg, text } from './svg.ts';
import { soft } from './symbols.ts';
import { textWidth } from './text-width.ts';

const size = 2.8;

interface Outline {
  readonly id: string;
  readonly points: readonly Point[];
  readonly name: Rect;
}

/** Outlines of the buildings whose corners are known, each with its name in its upper left corner. */
export function drawBuildings(study: Study, scale: PlanScale): readonly Svg[] {
  return outlines(study, scale).flatMap(({ id, points, name }) => [
    polygon(points, { fill: '#f3f5f7', stroke: soft, 'stroke-width': 0.7 }),
    text(id, { x: name.x, y: name.y + size, 'font-size': size, 'font-style': 'italic', fill: soft }),
  ]);
}

/** Where the names stand: no label may cover them. */
export function buildingNames(study: Study, scale: PlanScale): readonly Rect[] {
  return outlines(study, scale).map((o) => o.name);
}

/** Walls as closed lines, which a label should rather not cover. */
export function buildingWalls(study: Study, scale: PlanScale): readonly (readonly Point[])[] {
  return outlines(study, scale).map(({ points }) => [...points, points[0]!]);
}

function outlines(study: Study, scale: PlanScale): readonly Outline[] {
  return study.buildings
    .filter((b) => b.cornersM.length > 2)
    .map((b) => {
      const points = b.cornersM.map(([e, n]) => scale.toPaper([e, n]));
      const x = Math.min(...points.map((p) => p[0])) + 1.5;
      const y = Math.min(...points.map((p) => p[1])) + 1.2;
      return { id: b.id, points, name: { x, y, width: textWidth(b.id, size), height: size + 0.8 } };
    });
}
