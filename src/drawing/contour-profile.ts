import type { Study } from '../study/study.ts';
import type { StudySurface } from '../study/study-earth.ts';
import { say } from '../words/say.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { drawAxes, linearScale } from './chart-axes.ts';
import { curveLook, rangeFill, strokeOfCurve } from './chart-curves.ts';
import { chartLength } from './chart-length.ts';
import { percent } from './chart-names.ts';
import { stepM } from './contour-step.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import type { Rect } from './rect.ts';
import { speechOf } from './speech.ts';
import { drawing, element, line, type Point, polyline } from './svg.ts';

const words = soilDrawingWords.profile;
const widthMm = 180;
const plot: Rect = { x: 16, y: 9, width: widthMm - 20, height: 44 };

/** Potential of the surface along the line of the step figure, in per cent of the rise, as SVG text; the worst step is a strip. */
export function contourProfile(study: Study, surface: StudySurface): string {
  const speech = speechOf(study);
  const unit = chartLength(speech);
  const { points } = surface.line;
  const farthest = Math.max(...points.map((p) => unit.of(p.distanceM)));
  const x = linearScale([0, farthest], [plot.x, plot.x + plot.width]);
  const greatest = Math.min(100, Math.max(...points.map((p) => p.share * 100)));
  const y = linearScale([0, greatest], [plot.y + plot.height, plot.y], 6);
  const [from, to] = [surface.step.atM, surface.step.atM + stepM].map((d) => x.at(unit.of(d)));
  const strip = { x: from!, y: plot.y, width: to! - from!, height: plot.height, ...rangeFill };
  const curve = points.map((p): Point => [x.at(unit.of(p.distanceM)), y.at(p.share * 100)]);
  const legendTop = plot.y + plot.height + 11;
  const legend = drawLegend(soilDrawingWords.legend, legendEntries(say(words.step, {}, speech)), widthMm, legendTop);
  const list = told(points).map((p) => say(words.entry, { share: percent(p.share), distanceM: p.distanceM }, speech));
  const sheet = {
    widthMm,
    heightMm: legendTop + legend.heightMm,
    title: words.title,
    description: say(words.description, { group: surface.group, list }, speech),
  };
  return drawing(sheet, [
    ...drawAxes(plot, x, y, { x: `${words.distance}, ${unit.name}`, y: words.share }),
    element('rect', strip),
    polyline(curve, { ...strokeOfCurve(curveLook(0)), 'stroke-linejoin': 'round' }),
    ...legend.children,
  ]);
}

type Points = StudySurface['line']['points'];

/**
 * About six of the points, first and last among them: for those who cannot see the curve. Right at the metal a figure may
 * come out a hair above the whole; nothing lies higher than the metal.
 */
export function told(points: Points): Points {
  const every = Math.max(1, Math.round((points.length - 1) / 5));
  const some = points.filter((_, i) => i % every === 0 || i === points.length - 1);
  return some.map((p) => ({ ...p, share: Math.min(1, p.share) }));
}

function legendEntries(step: string): readonly LegendEntry[] {
  return [
    {
      sample: (x, y) => [line([x - 4.5, y], [x + 4.5, y], strokeOfCurve(curveLook(0)))],
      says: words.curve,
    },
    {
      sample: (x, y) => [element('rect', { x: x - 2.5, y: y - 1.6, width: 5, height: 3.2, ...rangeFill })],
      says: step,
    },
  ];
}
