import { textsOf } from './drawn.ts';

/** An axis as a reader takes it from paper: where its figures stand. */
export interface DrawnAxis {
  readonly ticks: readonly { readonly value: number; readonly atMm: number }[];
}

/** What a place on an axis stands for, from the two figures farthest apart. */
export function readLinear({ ticks }: DrawnAxis, atMm: number): number {
  const [a, b] = [ticks[0]!, ticks.at(-1)!];
  return a.value + ((b.value - a.value) * (atMm - a.atMm)) / (b.atMm - a.atMm);
}

export function readLog(axis: DrawnAxis, atMm: number): number {
  const ticks = axis.ticks.map(({ value, atMm: at }) => ({ value: Math.log10(value), atMm: at }));
  return 10 ** readLinear({ ticks }, atMm);
}

interface DrawnLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** The lines of a grid that have a figure. */
function gridLines(svg: string): readonly DrawnLine[] {
  const all = svg.matchAll(/<line x1="([\d.-]+)" y1="([\d.-]+)" x2="([\d.-]+)" y2="([\d.-]+)" stroke="#c4ccd3"/g);
  return [...all].map(([, x1, y1, x2, y2]) => ({ x1: Number(x1), y1: Number(y1), x2: Number(x2), y2: Number(y2) }));
}

/** Both axes of the plot that holds a point: upright lines with the figures below them, level ones with those at their left. */
export function axesAt(
  svg: string,
  [xMm, yMm]: readonly [number, number],
): { readonly x: DrawnAxis; readonly y: DrawnAxis } {
  const lines = gridLines(svg);
  const level = lines.filter((l) => l.y1 === l.y2 && l.x1 <= xMm && xMm <= l.x2);
  const upright = lines.filter((l) => l.x1 === l.x2 && Math.min(l.y1, l.y2) <= yMm && yMm <= Math.max(l.y1, l.y2));
  const left = level[0]?.x1 ?? Number.NaN;
  const right = level[0]?.x2 ?? Number.NaN;
  const inPlot = upright.filter((l) => level.length === 0 || (l.x1 >= left - 0.01 && l.x1 <= right + 0.01));
  const bottom = Math.max(...inPlot.map((l) => Math.max(l.y1, l.y2)));
  const figures = textsOf(svg).filter((t) => /^-?\d+(\.\d+)?$/.test(t.text));
  const x = inPlot.map((l) => {
    const below = figures.filter((t) => Math.abs(t.yMm - bottom - 3.8) < 0.1);
    const near = nearest(below, (t) => Math.abs(t.xMm + t.text.length * 0.75 - l.x1));
    return { value: Number(near.text), atMm: l.x1 };
  });
  const y = level.map((l) => {
    const beside = figures.filter((t) => t.xMm < left && t.xMm > left - 16);
    const near = nearest(beside, (t) => Math.abs(t.yMm - 0.95 - l.y1));
    return { value: Number(near.text), atMm: l.y1 };
  });
  return { x: { ticks: x }, y: { ticks: y } };
}

function nearest<T>(all: readonly T[], off: (one: T) => number): T {
  return all.reduce((best, one) => (off(one) < off(best) ? one : best));
}

/** Markers of one shape: where the middle of each is. */
export function circlesOf(svg: string, r: number): readonly (readonly [number, number])[] {
  const all = svg.matchAll(/<circle cx="([\d.-]+)" cy="([\d.-]+)" r="([\d.]+)"/g);
  return [...all].filter((m) => Number(m[3]) === r).map((m) => [Number(m[1]), Number(m[2])] as const);
}

/** Points of every open line, in order of drawing. */
export function polylinesOf(svg: string): readonly (readonly (readonly [number, number])[])[] {
  return [...svg.matchAll(/<polyline points="([^"]*)"/g)].map(([, points]) =>
    points!.split(' ').map((p) => p.split(',').map(Number) as unknown as readonly [number, number]),
  );
}
