import type { StudySurface } from '../study/study-earth.ts';
import { type Speech, say } from '../words/say.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { drawAxes, linearScale } from './chart-axes.ts';
import { curveLook, rangeFill, strokeOfCurve } from './chart-curves.ts';
import { chartLength } from './chart-length.ts';
import { percent } from './chart-names.ts';
import { stepM } from './contour-step.ts';
import type { Rect } from './rect.ts';
import { element, type Point, polyline, type Svg } from './svg.ts';

const words = soilDrawingWords.profile;

/** Potential of the surface along the line of the step figure, in per cent of the rise, in a plot; the worst step is a strip. */
export function contourProfile({ line: { points }, step }: StudySurface, plot: Rect, speech: Speech): readonly Svg[] {
  const unit = chartLength(speech);
  const farthest = Math.max(...points.map((p) => unit.of(p.distanceM)));
  const x = linearScale([0, farthest], [plot.x, plot.x + plot.width], 5);
  const greatest = Math.min(100, Math.max(...points.map((p) => p.share * 100)));
  const y = linearScale([0, greatest], [plot.y + plot.height, plot.y], 5);
  const [from, to] = [step.atM, step.atM + stepM].map((d) => x.at(unit.of(d)));
  const strip = { x: from!, y: plot.y, width: to! - from!, height: plot.height, ...rangeFill };
  const curve = points.map((p): Point => [x.at(unit.of(p.distanceM)), y.at(p.share * 100)]);
  return [
    ...drawAxes(plot, x, y, { x: `${words.distance}, ${unit.name}`, y: words.share }),
    element('rect', strip),
    polyline(curve, { ...strokeOfCurve(curveLook(0)), 'stroke-linejoin': 'round' }),
  ];
}

/** The same for those who cannot see it. */
export function profileText({ line: { points } }: StudySurface, speech: Speech): string {
  const list = told(points).map((p) => say(words.entry, { share: percent(p.share), distanceM: p.distanceM }, speech));
  return say(words.description, { list }, speech);
}

type Points = StudySurface['line']['points'];

/** At the metal, at about 1, 2, 4, 8 ... m, and last: the surface falls fastest where it begins. */
export function told(points: Points): Points {
  const last = points.at(-1)!;
  const kept: Points[number][] = [];
  for (const p of points) {
    const before = kept.at(-1);
    if (before === undefined || p.distanceM >= Math.max(1, 2 * before.distanceM) || p === last) kept.push(p);
  }
  return kept;
}
