import type { Rect } from './rect.ts';
import { element, line, type Point, type Svg, text } from './svg.ts';
import { ink } from './symbols.ts';
import { textWidth } from './text-width.ts';

export interface Tick {
  readonly value: number;
  /** '' for a line without a figure. */
  readonly says: string;
}

/** One axis: which figure stands where on paper. */
export interface Scale {
  /** Ends of the axis: the outermost ticks. */
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly Tick[];
  /** Place on paper, mm; figures beyond an end stand at the end. */
  readonly at: (value: number) => number;
}

/** Where an axis begins and ends on paper, mm; the greater figure may be at either end. */
export type Span = readonly [fromMm: number, toMm: number];

export const axisSize = 2.7;
/** Share of a step by which a figure may pass the last one before the axis gets another: nobody sees it. */
const slack = 0.01;

/** Even steps of 1, 2 or 5 times a power of ten, about `most` of them, ends on a step. */
export function linearScale([least, greatest]: readonly [number, number], span: Span, most = 7): Scale {
  const room = greatest > least ? greatest - least : Math.abs(least) || 1;
  const step = niceStep(room / most);
  const [from, to] = [Math.floor(least / step + slack), Math.ceil(greatest / step - slack)];
  const last = to > from ? to : from + 1;
  const ticks = Array.from({ length: last - from + 1 }, (_, i) => tick(plain((from + i) * step)));
  const [low, high] = [ticks[0]!.value, ticks.at(-1)!.value];
  return { low, high, ticks, at: (value) => place((within(value, low, high) - low) / (high - low), span) };
}

/** Lines at 1 to 9 of each decade, figures at 1, 2 and 5 where there are few decades; ends on 1, 2 or 5. Only above 0. */
export function logScale([least, greatest]: readonly [number, number], span: Span): Scale {
  if (!(least > 0)) throw new RangeError('a log scale needs figures above 0');
  const wide = Math.log10(greatest / least) > 2.2;
  const told = wide ? [1] : [1, 2, 5];
  const low = stepBelow(least);
  const high = Math.max(stepAbove(greatest), stepAbove(low * 1.5));
  const ticks = stepsBetween(low, high, [1, 2, 3, 4, 5, 6, 7, 8, 9]).map((value) => ({
    value,
    says: told.includes(leading(value)) ? String(value) : '',
  }));
  const decades = Math.log10(high / low);
  return { low, high, ticks, at: (value) => place(Math.log10(within(value, low, high) / low) / decades, span) };
}

/** A log scale where the figures differ tenfold and more, else a linear one from 0. */
export function fittingScale(figures: readonly number[], span: Span): Scale {
  const [least, greatest] = [Math.min(...figures), Math.max(...figures)];
  return least > 0 && greatest / least >= 10 ? logScale([least, greatest], span) : linearScale([0, greatest], span);
}

/** Frame, grid, figures along the axes, and their titles: that of y above its axis, so that nobody has to turn the page. */
export function drawAxes(plot: Rect, x: Scale, y: Scale, titles: { readonly x: string; readonly y: string }) {
  const bottom = plot.y + plot.height;
  const label = { 'font-size': axisSize, fill: ink };
  const upright = x.ticks.flatMap(({ value, says }) => {
    const at = x.at(value);
    const figure = text(says, { x: at - textWidth(says, axisSize) / 2, y: bottom + 3.8, ...label });
    return [gridLine([at, plot.y], [at, bottom], says), ...(says === '' ? [] : [figure])];
  });
  const level = y.ticks.flatMap(({ value, says }) => {
    const at = y.at(value);
    const figure = text(says, { x: plot.x - 1.4 - textWidth(says, axisSize), y: at + 0.95, ...label });
    return [gridLine([plot.x, at], [plot.x + plot.width, at], says), ...(says === '' ? [] : [figure])];
  });
  const xTitle = { x: plot.x + (plot.width - textWidth(titles.x, axisSize)) / 2, y: bottom + 8.4 };
  return [
    element('rect', { ...plot, fill: '#ffffff', stroke: 'none' }),
    ...upright,
    ...level,
    element('rect', { ...plot, fill: 'none', stroke: ink, 'stroke-width': 0.3 }),
    text(titles.x, { ...xTitle, ...label }),
    text(titles.y, { x: plot.x - yTicksRoom(y), y: plot.y - 2.6, ...label }),
  ];
}

/** Room that the figures along the y axis need at its left, mm. */
export function yTicksRoom(y: Pick<Scale, 'ticks'>): number {
  return Math.max(0, ...y.ticks.map((t) => textWidth(t.says, axisSize))) + 1.4;
}

function gridLine(from: Point, to: Point, says: string): Svg {
  const faint = says === '';
  return line(from, to, { stroke: faint ? '#e6eaed' : '#c4ccd3', 'stroke-width': faint ? 0.12 : 0.18 });
}

function tick(value: number): Tick {
  return { value, says: String(value) };
}

function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5].find((s) => s * power >= least * 0.9999) ?? 10) * power;
}

function stepsBetween(low: number, high: number, steps: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (let power = Math.floor(Math.log10(low)); 10 ** power <= high * 1.0001; power++) {
    for (const s of steps) {
      const value = plain(s * 10 ** power);
      if (value >= low * 0.9999 && value <= high * 1.0001) found.push(value);
    }
  }
  return found;
}

function stepBelow(value: number): number {
  return stepsBetween(value / 10, value, [1, 2, 5]).at(-1)!;
}

function stepAbove(value: number): number {
  return stepsBetween(value, value * 10, [1, 2, 5])[0]!;
}

function leading(value: number): number {
  return Number(value.toExponential(0)[0]);
}

function plain(value: number): number {
  return Number(value.toPrecision(12));
}

function within(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}

function place(share: number, [fromMm, toMm]: Span): number {
  return fromMm + share * (toMm - fromMm);
}
