import type { Point } from './svg.ts';

/** An upright rectangle on paper. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function rectAbout([x, y]: Point, width: number, height: number): Rect {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

/** Whether two rectangles share more than an edge. */
export function overlaps(a: Rect, b: Rect): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

export function inside(inner: Rect, outer: Rect): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** Whether a straight piece passes through the rectangle (the part of it inside is found by clipping, side by side). */
export function crosses(rect: Rect, [x1, y1]: Point, [x2, y2]: Point): boolean {
  // most pieces lie wholly to one side
  if ((x1 < rect.x && x2 < rect.x) || (y1 < rect.y && y2 < rect.y)) return false;
  const [right, foot] = [rect.x + rect.width, rect.y + rect.height];
  if ((x1 > right && x2 > right) || (y1 > foot && y2 > foot)) return false;
  let [from, to] = [0, 1];
  const sides = [
    [-(x2 - x1), x1 - rect.x],
    [x2 - x1, right - x1],
    [-(y2 - y1), y1 - rect.y],
    [y2 - y1, foot - y1],
  ] as const;
  for (const [towards, room] of sides) {
    if (towards === 0 && room <= 0) return false;
    if (towards < 0) from = Math.max(from, room / towards);
    if (towards > 0) to = Math.min(to, room / towards);
  }
  return from < to;
}

/** Point of the rectangle nearest to another point. */
export function nearestOn(rect: Rect, [x, y]: Point): Point {
  return [Math.min(Math.max(x, rect.x), rect.x + rect.width), Math.min(Math.max(y, rect.y), rect.y + rect.height)];
}
