import type { Study } from '../study/study.ts';
import type { StudySoilFit } from '../study/study-earth.ts';
import { say } from '../words/say.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { drawAxes, logScale } from './chart-axes.ts';
import { curveLook, drawMarker, rangeFill, strokeOfCurve } from './chart-curves.ts';
import { type ChartLength, chartLength } from './chart-length.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import type { Rect } from './rect.ts';
import { layersPanel, openStroke } from './sounding-layers.ts';
import { speechOf } from './speech.ts';
import { drawing, element, line, type Point, polyline, type Svg } from './svg.ts';
import { fitText } from './text-width.ts';

const words = soilDrawingWords.sounding;
const widthMm = 180;
const plotMm = 42;
const topMm = 9;
const underMm = 11;
/** Room for an entry of the legend. */
const mostMm = 75;

/**
 * The four-pin readings and the layers that fit them, as SVG text: apparent resistivity against spacing, both scales
 * logarithmic, with the fitted curve; beside it the layers as steps of resistivity against depth.
 */
export function soundingChart(study: Study, read: StudySoilFit): string {
  const fit = { ...read, points: read.points.filter(isDrawable) };
  const speech = speechOf(study);
  const unit = chartLength(speech);
  const hasLayers = fit.layers.length > 0;
  const left: Rect = { x: 16, y: topMm, width: hasLayers ? 86 : 160, height: plotMm };
  const right: Rect = { x: 122, y: topMm, width: 55, height: plotMm };
  const legend = drawLegend(soilDrawingWords.legend, legendEntries(fit, speech), widthMm, topMm + plotMm + underMm);
  const sheet = {
    widthMm,
    heightMm: topMm + plotMm + underMm + legend.heightMm,
    title: say(words.title, { site: study.site.name ?? study.site.file }, speech),
    description: say(
      hasLayers ? words.description : words.descriptionUnfitted,
      { points: String(fit.points.length), layers: String(fit.layers.length) },
      speech,
    ),
  };
  return drawing(sheet, [
    ...curvePanel(fit, left, unit),
    ...(hasLayers ? layersPanel(fit, right, unit) : []),
    ...legend.children,
  ]);
}

/** A reading of nothing, or one beyond the instrument, has no place on a logarithmic scale; the table has it. */
export function isDrawable({ spacingM, measuredOhmM }: StudySoilFit['points'][number]): boolean {
  return spacingM > 0 && measuredOhmM > 0 && Number.isFinite(measuredOhmM);
}

function curvePanel(fit: StudySoilFit, plot: Rect, unit: ChartLength): readonly Svg[] {
  const spacings = [...fit.points, ...fit.curve].map((p) => unit.of(p.spacingM));
  const ohmM = [...fit.points.map((p) => p.measuredOhmM), ...fit.curve.map((p) => p.ohmM)];
  const x = logScale(ends(spacings), [plot.x, plot.x + plot.width]);
  const y = logScale(ends(ohmM), [plot.y + plot.height, plot.y]);
  const names = { x: `${words.spacing}, ${unit.name}`, y: words.apparent };
  const curve = fit.curve.map((p): Point => [x.at(unit.of(p.spacingM)), y.at(p.ohmM)]);
  const readings = readingsOf(fit);
  return [
    ...drawAxes(plot, x, y, names),
    ...(curve.length > 1 ? [polyline(curve, { ...strokeOfCurve(curveLook(0)), 'stroke-linejoin': 'round' })] : []),
    ...fit.points.map((p) =>
      drawMarker([x.at(unit.of(p.spacingM)), y.at(p.measuredOhmM)], curveLook(readings.indexOf(p.reading)), 1.2),
    ),
  ];
}

function ends(figures: readonly number[]): readonly [number, number] {
  return [Math.min(...figures), Math.max(...figures)];
}

/** Readings that have points, in the order of the points. */
function readingsOf(fit: StudySoilFit): readonly string[] {
  return [...new Set(fit.points.map((p) => p.reading))];
}

function legendEntries(fit: StudySoilFit, speech: ReturnType<typeof speechOf>): readonly LegendEntry[] {
  const fitted: readonly LegendEntry[] = [
    { sample: (x, y) => [line([x - 4.5, y], [x + 4.5, y], strokeOfCurve(curveLook(0)))], says: words.fitted },
    { sample: stepSample, says: words.layers },
    ...(fit.layers.every((l) => l.resistivityOhmM.resolved) ? [] : [openEntry]),
    { sample: bandSample, says: words.range },
  ];
  const readings = readingsOf(fit).map((reading, i) => ({
    sample: (x: number, y: number) => [drawMarker([x, y], curveLook(i), 1.2)],
    says: fitText(say(words.reading, { reading }, speech), 2.5, mostMm),
  }));
  return fit.layers.length > 0 ? [...readings, ...fitted] : readings;
}

const openEntry: LegendEntry = {
  sample: (x, y) => [line([x - 4.5, y], [x + 4.5, y], openStroke)],
  says: words.open,
};

function stepSample(x: number, y: number): readonly Svg[] {
  const points: readonly Point[] = [
    [x - 4, y - 1.6],
    [x - 4, y],
    [x + 4, y],
    [x + 4, y + 1.6],
  ];
  return [polyline(points, strokeOfCurve(curveLook(0), 0.7))];
}

function bandSample(x: number, y: number): readonly Svg[] {
  return [element('rect', { x: x - 4.5, y: y - 1.4, width: 9, height: 2.8, ...rangeFill })];
}
