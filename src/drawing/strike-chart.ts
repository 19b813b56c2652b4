import type { Study } from '../study/study.ts';
import type { StudyStrike } from '../study/study-strike.ts';
import { formatQuantity } from '../units/format.ts';
import { type Speech, say } from '../words/say.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { drawAxes, linearScale, logScale, type Scale, type Span } from './chart-axes.ts';
import { curveLook, drawEndLabels, drawMarker, strokeOfCurve } from './chart-curves.ts';
import type { Rect } from './rect.ts';
import { speechOf } from './speech.ts';
import { peakOfTrace, type StrikeTrace, strikeTraces } from './strike-traces.ts';
import { drawing, type Point, polyline } from './svg.ts';

const words = strikeReportWords.chart;
const widthMm = 180;
const namesMm = 34;
const plot: Rect = { x: 16, y: 9, width: widthMm - 16 - namesMm, height: 62 };
const microsecondS = 1e-6;
const kilovoltV = 1e3;
/** Below this the axis counts in volts. */
const kilovoltsFromV = 2e3;
/** Times that differ by more have a logarithmic axis: a front is a hundredth of its tail. */
const logFromRatio = 50;
/** Of a logarithmic axis no more than this lies before the first peak. */
const beforePeak = 30;
/** Two points nearer than this on paper are one to the eye. */
const seenMm = 0.2;
const markers = 5;

/**
 * Potential of the chosen parts against remote earth over time, as SVG text; null where the strike has no curves. Time is
 * logarithmic where front and tail would not be seen side by side. Curves are told apart by dash and marker, and named.
 */
export function strikeChart(study: Study, strike: StudyStrike): string | null {
  const traces = strikeTraces(strike);
  if (traces.length === 0) return null;
  const speech = speechOf(study);
  const volts = traces.flatMap((t) => t.points.map((p) => p.volt));
  const [least, greatest] = extremes([0, ...volts]);
  const inKilovolt = Math.max(greatest, -least) >= kilovoltsFromV;
  const unitV = inKilovolt ? kilovoltV : 1;
  const { x, isLog } = timeScale(traces, [plot.x, plot.x + plot.width]);
  const y = linearScale([least / unitV, greatest / unitV], [plot.y + plot.height, plot.y], 6);
  const drawn = traces.map((t, i) => ({ says: t.part, look: curveLook(i), at: onPaper(t, x, y, unitV) }));
  const list = traces.map((t) => entry(t, speech));
  const sheet = {
    widthMm,
    heightMm: plot.y + plot.height + 10,
    title: say(words.title, { at: strike.at }, speech),
    description: say(words.description, { count: traces.length, list }, speech),
  };
  const titles = {
    x: isLog ? words.timeLog : words.time,
    y: say(inKilovolt ? words.kilovolt : words.volt, {}, speech),
  };
  const labels = drawn.map(({ says, look, at }) => ({ says, look, at: at.at(-1)! }));
  return drawing(sheet, [
    ...drawAxes(plot, x, y, titles),
    ...drawn.map(({ at, look }) => polyline(at, { ...strokeOfCurve(look), 'stroke-linejoin': 'round' })),
    ...drawn.flatMap(({ at, look }, i) => markersOn(at, i / drawn.length).map((p) => drawMarker(p, look))),
    ...drawEndLabels(labels, plot.x + plot.width, namesMm, [plot.y + 2, plot.y + plot.height - 1]),
  ]);
}

function timeScale(traces: readonly StrikeTrace[], span: Span): { readonly x: Scale; readonly isLog: boolean } {
  const times = traces[0]!.points.map((p) => p.timeS / microsecondS);
  const last = Math.max(...times);
  const after = Math.min(...times.filter((t) => t > 0));
  const peaks = traces.map((t) => peakOfTrace(t).timeS / microsecondS).filter((t) => t > 0);
  const first = Math.max(after, Math.min(last, ...peaks) / beforePeak);
  const isLog = Number.isFinite(first) && last / first >= logFromRatio;
  return { x: isLog ? logScale([first, last], span) : linearScale([0, last], span, 9), isLog };
}

/** Its points from the left edge on, those left out that nobody would see; a logarithmic axis has no 0. */
function onPaper({ points }: StrikeTrace, x: Scale, y: Scale, unitV: number): readonly Point[] {
  const inPlot = points.filter((p) => p.timeS / microsecondS >= x.low * (1 - 1e-9));
  const kept: Point[] = [];
  for (const [i, p] of inPlot.entries()) {
    const at: Point = [x.at(p.timeS / microsecondS), y.at(p.volt / unitV)];
    const last = kept.at(-1);
    const isNew = last === undefined || Math.hypot(at[0] - last[0], at[1] - last[1]) >= seenMm;
    if (isNew || i === inPlot.length - 1) kept.push(at);
  }
  return kept;
}

/** Evenly spread over the width, each curve a little farther right than the one before, so that markers do not hide one another. */
function markersOn(points: readonly Point[], turn: number): readonly Point[] {
  const step = plot.width / markers;
  return Array.from({ length: markers }, (_, i) => plot.x + (i + 0.15 + 0.7 * turn) * step).flatMap((x) => {
    const after = points.findIndex((p) => p[0] >= x);
    if (after < 1) return [];
    const [a, b] = [points[after - 1]!, points[after]!];
    return [[x, a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0])] as const];
  });
}

/** For those who cannot see it. */
function entry(trace: StrikeTrace, speech: Speech): string {
  const { volt, timeS } = peakOfTrace(trace);
  return say(words.entry, { part: trace.part, peak: formatQuantity(volt, 'voltage', 'si'), atS: timeS }, speech);
}

function extremes(figures: readonly number[]): readonly [number, number] {
  return figures.reduce(([a, b], f) => [Math.min(a, f), Math.max(b, f)] as const, [Infinity, -Infinity] as const);
}
