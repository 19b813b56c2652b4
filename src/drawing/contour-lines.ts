import type { StudySurface } from '../study/study-earth.ts';
import { contourLevels } from './contour-levels.ts';
import { contoursOf } from './contours-of.ts';
import type { PlanScale } from './plan-scale.ts';
import { inside, overlaps, type Rect, rectAbout } from './rect.ts';
import { element, type Point, polyline, type Svg, text } from './svg.ts';
import { textWidth } from './text-width.ts';

/** A line of equal potential on paper. */
export interface PaperContour {
  readonly level: number;
  readonly points: readonly Point[];
}

const colour = '#123f5c';
const size = 2.3;
/** A shorter line has no room for its figure. */
const leastMm = 9;
/** A long line is told again after so much of it. */
const againMm = 160;
const tries = Array.from({ length: 24 }, (_, i) => ((i * 7) % 24) / 24);

/** A shorter line lies under the symbol of what it runs round. */
const seenMm = 7;

/** All lines of the map that can be seen; those of the highest level first. */
export function contoursOnPaper({ grid }: StudySurface, scale: PlanScale): readonly PaperContour[] {
  const all = contourLevels(grid).flatMap((level) =>
    contoursOf(grid, level / 100).map((points) => ({ level, points: points.map(scale.toPaper) })),
  );
  return all.filter(({ points }) => lengthOf(points) >= seenMm);
}

export function drawContours(contours: readonly PaperContour[]): readonly Svg[] {
  return contours.map(({ level, points }) => polyline(points, contourStroke(level)));
}

/** Every fifth of the rise a little heavier, so that an eye can count. */
export function contourStroke(level: number) {
  const width = [90, 50, 10].includes(level) ? 0.5 : 0.28;
  return { stroke: colour, 'stroke-width': width, 'stroke-linejoin': 'round' };
}

export interface ContourLabel {
  readonly rect: Rect;
  readonly says: string;
}

/** The figure of each line on the line itself, where it hides nothing; long lines have it more than once. */
export function placeContourLabels(
  contours: readonly PaperContour[],
  sheet: Rect,
  blocked: readonly Rect[],
): readonly ContourLabel[] {
  const taken = [...blocked];
  return contours.flatMap(({ level, points }): readonly ContourLabel[] => {
    const length = lengthOf(points);
    const says = `${level} %`;
    const wanted = length < leastMm ? 0 : 1 + Math.floor(length / againMm);
    const found: ContourLabel[] = [];
    for (const share of tries) {
      if (found.length >= wanted) break;
      const rect = rectAbout(along(points, length * share), textWidth(says, size) + 1, size + 0.6);
      const isFar = found.every((f) => Math.hypot(f.rect.x - rect.x, f.rect.y - rect.y) > againMm / 3);
      if (!isFar || !inside(rect, sheet) || taken.some((t) => overlaps(t, rect))) continue;
      taken.push(rect);
      found.push({ rect, says });
    }
    return found;
  });
}

export function drawContourLabel({ rect, says }: ContourLabel): readonly Svg[] {
  return [
    element('rect', { ...rect, rx: 0.6, fill: '#ffffff' }),
    text(says, { x: rect.x + 0.5, y: rect.y + size - 0.05, 'font-size': size, fill: colour }),
  ];
}

function along(points: readonly Point[], distanceMm: number): Point {
  let left = distanceMm;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const piece = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (piece > 0 && piece >= left)
      return [a[0] + ((b[0] - a[0]) * left) / piece, a[1] + ((b[1] - a[1]) * left) / piece];
    left -= piece;
  }
  return points.at(-1)!;
}

function lengthOf(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p[0] - points[i]![0], p[1] - points[i]![1]), 0);
}
