import type { Bounded } from '../study/study-earth.ts';
import { isMetalBelow } from '../words/earth-ohm.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import type { Scale, Span } from './chart-axes.ts';
import { rangeFill } from './chart-curves.ts';
import type { LegendEntry } from './legend.ts';
import { circle, element, line, type Point, polygon, type Svg } from './svg.ts';
import { ink } from './symbols.ts';

const words = soilDrawingWords.season;
const halfMm = 1.25;

/**
 * A bar from low to high about a height, a dot at the likely figure, and an arrow at the end of the axis where nothing of
 * the soil bounds it.
 */
export function seasonBar(ohm: Bounded, x: Scale, y: number, [leftMm, rightMm]: Span): readonly Svg[] {
  const { value, low, high } = ohm;
  const isOpenBelow = isMetalBelow(ohm);
  const from = isOpenBelow ? leftMm + 2 : x.at(low);
  const to = high === null ? rightMm - 2 : Math.max(x.at(high), from + 0.4);
  return [
    element('rect', { x: from, y: y - halfMm, width: Math.max(0.4, to - from), height: 2 * halfMm, ...barFill }),
    ...(isOpenBelow ? arrow([leftMm + 0.3, y], -1) : []),
    ...(high === null ? arrow([rightMm - 0.3, y], 1) : []),
    ...(value === null ? [] : dot([x.at(value), y])),
  ];
}

/** Darker edge than a strip behind a curve: here the bar is what is told. */
const barFill = { ...rangeFill, stroke: ink, 'stroke-width': 0.25 };

function dot(at: Point): readonly Svg[] {
  return [circle(at, 0.8, { fill: ink })];
}

/** way: 1 to the right, -1 to the left. */
function arrow([x, y]: Point, way: 1 | -1): readonly Svg[] {
  const [neck, tail] = [x - 2 * way, x - 4 * way];
  const head: readonly Point[] = [
    [x, y],
    [neck, y - 1.9],
    [neck, y + 1.9],
  ];
  return [polygon(head, { fill: ink }), line([tail, y], [neck, y], { stroke: ink, 'stroke-width': 0.4 })];
}

/** Only what these figures show. */
export function seasonLegend(shown: readonly (Bounded | null)[]): readonly LegendEntry[] {
  const known = shown.filter((b): b is Bounded => b !== null);
  const bar: LegendEntry = {
    sample: (x, y) => [element('rect', { x: x - 4.5, y: y - halfMm, width: 9, height: 2 * halfMm, ...barFill })],
    says: words.bar,
  };
  const likely: LegendEntry = { sample: (x, y) => dot([x, y]), says: words.likely };
  const open: LegendEntry = { sample: (x, y) => arrow([x + 2, y], 1), says: words.open };
  const openBelow: LegendEntry = { sample: (x, y) => arrow([x - 2, y], -1), says: words.openBelow };
  return [
    bar,
    ...(known.some((b) => b.value !== null) ? [likely] : []),
    ...(known.some((b) => b.high === null) ? [open] : []),
    ...(known.some(isMetalBelow) ? [openBelow] : []),
  ];
}
