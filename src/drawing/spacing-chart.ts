import type { Study } from '../study/study.ts';
import type { StudySpacingGain } from '../study/study-earth.ts';
import { type Speech, say } from '../words/say.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { drawAxes, linearScale } from './chart-axes.ts';
import { curveLook, drawCurve, drawEndLabels } from './chart-curves.ts';
import { chartLength } from './chart-length.ts';
import { percent } from './chart-names.ts';
import type { Rect } from './rect.ts';
import { speechOf } from './speech.ts';
import { drawing, element, line, type Point, text } from './svg.ts';
import { ink } from './symbols.ts';
import { textWidth } from './text-width.ts';

const words = soilDrawingWords.spacing;
/** Two charts stand side by side on a sheet of paper. */
const widthMm = 88;
const namesMm = 21;
const plot: Rect = { x: 11, y: 9, width: widthMm - 11 - namesMm, height: 40 };
const size = 2.7;
/** Two that do not feel each other have half the resistance of one. */
const halfShare = 0.5;

/**
 * How much lower two joined ones lie than one alone, against their distance, as SVG text: a curve for each electrode,
 * named at its end, and the level that they would reach if they did not feel each other.
 */
export function spacingChart(study: Study, gains: readonly StudySpacingGain[]): string {
  const speech = speechOf(study);
  const unit = chartLength(speech);
  const points = gains.flatMap((g) => g.points);
  const farthest = Math.max(...points.map((p) => unit.of(p.spacingM)));
  const most = Math.max(halfShare + 0.05, ...points.map((p) => p.gainShare));
  const least = Math.min(0, ...points.map((p) => p.gainShare));
  const x = linearScale([0, farthest], [plot.x, plot.x + plot.width]);
  const y = linearScale([least * 100, most * 100], [plot.y + plot.height, plot.y]);
  const drawn = gains.map((g, i) => ({
    says: g.electrode,
    look: curveLook(i),
    at: g.points.map((p): Point => [x.at(unit.of(p.spacingM)), y.at(p.gainShare * 100)]),
  }));
  const labels = drawn.flatMap(({ says, look, at }) => (at.length === 0 ? [] : [{ says, look, at: at.at(-1)! }]));
  const sheet = {
    widthMm,
    heightMm: plot.y + plot.height + 11,
    title: words.title,
    description: say(words.description, { list: entries(gains, speech) }, speech),
  };
  return drawing(sheet, [
    ...drawAxes(plot, x, y, { x: `${words.distance}, ${unit.name}`, y: words.gain }),
    ...apartLevel(y.at(halfShare * 100)),
    ...drawn.flatMap(({ at, look }) => drawCurve(at, look)),
    ...drawEndLabels(labels, plot.x + plot.width, namesMm, [plot.y + 2, plot.y + plot.height - 1]),
  ]);
}

/** The level is named on itself, on paper of its own. */
function apartLevel(y: number) {
  const width = textWidth(words.apart, size);
  const x = plot.x + 4;
  return [
    line([plot.x, y], [plot.x + plot.width, y], { stroke: ink, 'stroke-width': 0.35, 'stroke-dasharray': '0.6 0.9' }),
    element('rect', { x: x - 0.8, y: y - 4.3, width: width + 1.6, height: 3.6, fill: '#ffffff' }),
    text(words.apart, { x, y: y - 1.5, 'font-size': size, fill: ink }),
  ];
}

function entries(gains: readonly StudySpacingGain[], speech: Speech): readonly string[] {
  return gains.flatMap(({ electrode, points }) => {
    const shown = points.filter((_, i) => i === 0 || i === points.length - 1 || i === Math.floor(points.length / 2));
    return shown.map((p) => say(words.entry, { electrode, gain: percent(p.gainShare), distanceM: p.spacingM }, speech));
  });
}
