import type { StudySoilFit } from '../study/study-earth.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { drawAxes, linearScale, logScale, type Scale } from './chart-axes.ts';
import { curveLook, rangeFill, strokeOfCurve } from './chart-curves.ts';
import type { ChartLength } from './chart-length.ts';
import type { Rect } from './rect.ts';
import { element, line, type Point, polyline, type Svg } from './svg.ts';
import { ink } from './symbols.ts';

const words = soilDrawingWords.sounding;
/** The last layer is drawn at least as far again as this share of what lies above it. */
const lastShare = 0.6;
/** A boundary that may lie deeper than this many times its likely depth is drawn as a bar that leaves the plot. */
const worthShowing = 3;
/** A range that nobody can narrow is drawn no further than this many times the figure itself. */
const farthest = 10;

type Layers = StudySoilFit['layers'];

/** Layers as steps of resistivity, log, against depth, downwards, with the 95 % range of each behind its step. */
export function layersPanel(fit: StudySoilFit, plot: Rect, unit: ChartLength): readonly Svg[] {
  const deepestM = deepest(fit);
  const edges = boundariesM(fit.layers);
  const shown = fit.layers.map((l) => shownRange(l.resistivityOhmM));
  const x = logScale([Math.min(...shown.map((r) => r.low)), Math.max(...shown.map((r) => r.high))], ends(plot));
  const y = linearScale([0, unit.of(deepestM)], [plot.y, plot.y + plot.height]);
  const depthAt = (depthM: number) => y.at(unit.of(depthM));
  const bands = shown.map((r, i) => band(x, r, [depthAt(edges[i]!), depthAt(edges[i + 1]!)]));
  const steps = fit.layers.flatMap((l, i): readonly Point[] => {
    const at = x.at(l.resistivityOhmM.value);
    return [
      [at, depthAt(edges[i]!)],
      [at, depthAt(edges[i + 1]!)],
    ];
  });
  return [
    ...drawAxes(plot, x, y, { x: words.resistivity, y: `${words.depth}, ${unit.name}` }),
    ...bands,
    ...stepsOf(fit.layers, steps),
    ...fit.layers.flatMap((l, i) => boundaryRange(l, edges[i]!, steps, i, depthAt)),
  ];
}

/** Each layer's own stretch, thin and dashed where its resistivity is not resolved, and the level ones between them. */
function stepsOf(layers: Layers, steps: readonly Point[]): readonly Svg[] {
  const whole = strokeOfCurve(curveLook(0), 0.7);
  if (layers.every((l) => l.resistivityOhmM.resolved)) return [polyline(steps, whole)];
  return steps.slice(1).map((p, i) => {
    // a stretch down a layer, then the level one to the next
    const beside = [layers[Math.floor(i / 2)], layers[Math.ceil(i / 2)]];
    const isOpen = beside.some((l) => l?.resistivityOhmM.resolved === false);
    return line(steps[i]!, p, isOpen ? openStroke : whole);
  });
}

/** Of a figure that is not resolved: what the curve was drawn for, one of many. */
export const openStroke = { stroke: ink, 'stroke-width': 0.3, 'stroke-dasharray': '1.2 0.9' } as const;

function ends({ x, width }: Rect): readonly [number, number] {
  return [x, x + width];
}

/** Down past the ranges of the boundaries as far as those are worth the paper; with one layer to where readings see. */
function deepest({ layers, points }: StudySoilFit): number {
  const edges = boundariesM(layers).slice(1, -1);
  const above = edges.at(-1) ?? 0;
  if (above === 0) return Math.max(...points.map((p) => p.spacingM));
  const lowest = edges.map((e, i) => e - layers[i]!.thicknessM!.value + (layers[i]!.thicknessM!.high ?? 0));
  return Math.max(above * (1 + lastShare), ...lowest.filter((l) => l < above * worthShowing).map((l) => l * 1.05));
}

/** Of each layer and below the last: the last has no end, and is drawn down to the edge. */
function boundariesM(layers: Layers): readonly number[] {
  const edges = [0];
  for (const { thicknessM } of layers.slice(0, -1)) edges.push(edges.at(-1)! + (thicknessM?.value ?? 0));
  return [...edges, Infinity];
}

function shownRange({ value, low, high }: Layers[number]['resistivityOhmM']) {
  return { low: Math.max(low, value / farthest), high: Math.min(high ?? Infinity, value * farthest) };
}

function band(x: Scale, { low, high }: { low: number; high: number }, [top, bottom]: readonly [number, number]): Svg {
  return element('rect', { x: x.at(low), y: top, width: x.at(high) - x.at(low), height: bottom - top, ...rangeFill });
}

/** How deep the lower edge of a layer may lie: an upright bar in the middle of its step. */
function boundaryRange(
  { thicknessM }: Layers[number],
  topM: number,
  steps: readonly Point[],
  i: number,
  depthAt: (depthM: number) => number,
): readonly Svg[] {
  const [from, to] = [steps[2 * i + 1], steps[2 * i + 2]];
  if (thicknessM === null || from === undefined || to === undefined) return [];
  const middle = (from[0] + to[0]) / 2;
  const lowestM = topM + (thicknessM.high ?? Infinity);
  const [top, bottom] = [depthAt(topM + thicknessM.low), depthAt(lowestM)];
  const isWhole = bottom < depthAt(Infinity);
  const look = { stroke: ink, 'stroke-width': 0.35 };
  const cap = (y: number) => line([middle - 1, y], [middle + 1, y], look);
  return [line([middle, top], [middle, bottom], look), cap(top), ...(isWhole ? [cap(bottom)] : [])];
}
