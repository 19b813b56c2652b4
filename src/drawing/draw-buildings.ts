import type { Study } from '../study/study.ts';
import type { PlanScale } from './plan-scale.ts';
import { polygon, type Svg, text } from './svg.ts';
import { soft } from './symbols.ts';

/** Outlines of the buildings whose corners are known, each with its name along its upper wall. */
export function drawBuildings(study: Study, scale: PlanScale): readonly Svg[] {
  return study.buildings
    .filter((b) => b.cornersM.length > 2)
    .flatMap((b) => {
      const points = b.cornersM.map(([e, n]) => scale.toPaper([e, n]));
      const left = Math.min(...points.map((p) => p[0]));
      const top = Math.min(...points.map((p) => p[1]));
      return [
        polygon(points, { fill: '#f3f5f7', stroke: soft, 'stroke-width': 0.7 }),
        text(b.id, { x: left + 1.5, y: top + 4, 'font-size': 2.8, 'font-style': 'italic', fill: soft }),
      ];
    });
}
