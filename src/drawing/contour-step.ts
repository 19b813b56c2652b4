import type { StudySurface } from '../study/study-earth.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import type { Ground, PlanScale } from './plan-scale.ts';
import { overlaps, type Rect, rectAbout } from './rect.ts';
import { element, line, type Point, type Svg, text } from './svg.ts';
import { ink, soft } from './symbols.ts';

const words = soilDrawingWords.contour;
/** The step of the figure, metres. */
export const stepM = 1;
const size = 3;
const tickMm = 1.5;
/** From the line to the bar of the step: past the symbol of an electrode. */
const asideMm = 3.4;

/** The line from A to B on paper, with the worst step on it. */
export interface StepLine {
  readonly from: Point;
  readonly to: Point;
  /** Ends of the worst step on the line, and of its bar beside the line, where no symbol hides it. */
  readonly step: readonly [Point, Point];
  readonly bar: readonly [Point, Point];
  /** Where A and B stand: beyond the line's ends, or beside them where a symbol is there. */
  readonly letters: readonly { readonly says: string; readonly rect: Rect }[];
}

/** `symbols`: rooms that the letters keep clear of. */
export function stepLineOf(surface: StudySurface, scale: PlanScale, symbols: readonly Rect[] = []): StepLine {
  const { fromM, toM } = surface.line;
  const [from, to] = [scale.toPaper(fromM), scale.toPaper(toM)];
  const { atM } = surface.step;
  const step = [scale.toPaper(onLine(fromM, toM, atM)), scale.toPaper(onLine(fromM, toM, atM + stepM))] as const;
  const [ax, ay] = across(from, to);
  const up = ay > 0 ? -1 : 1;
  const aside = ([x, y]: Point): Point => [x + ax * up * asideMm, y + ay * up * asideMm];
  const bar = [aside(step[0]), aside(step[1])] as const;
  const taken = [...symbols, barRoom(bar)];
  const letters = [
    { says: words.from, rect: letterRoom(to, from, [-ax * up, -ay * up], taken) },
    { says: words.to, rect: letterRoom(from, to, [-ax * up, -ay * up], taken) },
  ];
  return { from, to, step, bar, letters };
}

/** Dashed line, and beside it a bold bar with ends over the worst step, as dimensions are drawn. */
export function drawStepLine({ from, to, step, bar, letters }: StepLine): readonly Svg[] {
  return [
    line(from, to, stepLineStroke),
    ...step.map((p, i) => line(p, bar[i]!, { stroke: ink, 'stroke-width': 0.2 })),
    ...stepBar(...bar),
    ...letters.flatMap(({ says, rect }) => [
      element('rect', { ...rect, rx: 0.6, fill: '#ffffff' }),
      text(says, { x: rect.x + 0.6, y: rect.y + size, 'font-size': size, 'font-weight': 'bold', fill: ink }),
    ]),
  ];
}

export const stepLineStroke = { stroke: ink, 'stroke-width': 0.35, 'stroke-dasharray': '2.4 1' } as const;

/** Of the square of ground that was worked out. */
export const edgeStroke = { stroke: soft, 'stroke-width': 0.2, 'stroke-dasharray': '0.5 1' } as const;

export function stepBar(from: Point, to: Point): readonly Svg[] {
  const [ax, ay] = across(from, to).map((part) => part * tickMm) as [number, number];
  const tick = ([x, y]: Point) => line([x - ax, y - ay], [x + ax, y + ay], tickStroke);
  return [line(from, to, { stroke: ink, 'stroke-width': 1.1 }), tick(from), tick(to)];
}

const tickStroke = { stroke: ink, 'stroke-width': 0.5 } as const;

/** One millimetre at right angles to a line. */
function across([x1, y1]: Point, [x2, y2]: Point): Point {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  return [(y1 - y2) / length, (x2 - x1) / length];
}

function onLine([e1, n1]: Ground, [e2, n2]: Ground, distanceM: number): Ground {
  const share = distanceM / (Math.hypot(e2 - e1, n2 - n1) || 1);
  return [e1 + (e2 - e1) * share, n1 + (n2 - n1) * share];
}

/** Beyond the end, beside it on the side away from the bar, on the other side, farther beside it, farther beyond it. */
const letterPlaces = [
  [3.4, 0],
  [0, 4.4],
  [0, -4.4],
  [0, 6.4],
  [0, -6.4],
  [7, 0],
  [10, 0],
] as const;

/** The first place at the second end where nothing stands; the plain one where there is none. */
function letterRoom([x1, y1]: Point, [x2, y2]: Point, [sx, sy]: Point, taken: readonly Rect[]): Rect {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [ox, oy] = [(x2 - x1) / length, (y2 - y1) / length];
  const rooms = letterPlaces.map(([beyond, beside]) =>
    rectAbout([x2 + ox * beyond + sx * beside, y2 + oy * beyond + sy * beside], 3.4, 3.8),
  );
  return rooms.find((room) => !taken.some((t) => overlaps(room, t))) ?? rooms[0]!;
}

/** The bar of the worst step stays free of labels. */
export function barRoom([[x1, y1], [x2, y2]]: StepLine['bar']): Rect {
  const [x, y] = [Math.min(x1, x2) - 1.6, Math.min(y1, y2) - 1.6];
  return { x, y, width: Math.abs(x2 - x1) + 3.2, height: Math.abs(y2 - y1) + 3.2 };
}
