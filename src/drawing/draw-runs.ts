import { type Run, runStroke } from './plan-runs.ts';
import type { PlanScale } from './plan-scale.ts';
import { overlaps, type Rect, rectAbout } from './rect.ts';
import { element, type Point, polyline, type Svg, text } from './svg.ts';
import { ink } from './symbols.ts';
import { textWidth } from './text-width.ts';

export interface DrawnRun {
  readonly run: Run;
  readonly points: readonly Point[];
}

const leastMm = 3;
const size = 2.2;
const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];

/** Runs on paper; one that would be shorter than a symbol is left to the schedules. */
export function runsOnPaper(runs: readonly Run[], scale: PlanScale): readonly DrawnRun[] {
  return runs
    .map((run) => ({ run, points: run.points.map(scale.toPaper) }))
    .filter(({ points }) => lengthOf(points) >= leastMm);
}

/** Wide pale metal first, so that wires stay on top of it. */
export function drawRuns(runs: readonly DrawnRun[]): readonly Svg[] {
  const metalFirst = [...runs.filter((r) => r.run.look === 'metal'), ...runs.filter((r) => r.run.look !== 'metal')];
  return metalFirst.map(({ run, points }) => polyline(points, runStroke(run.look, run.buried)));
}

export interface RunLabel {
  readonly rect: Rect;
  readonly text: string;
}

/** Number of each run on the run itself, where it covers nothing; the middle is tried first. */
export function placeRunLabels(
  runs: readonly DrawnRun[],
  numbers: ReadonlyMap<string, string>,
  blocked: readonly Rect[],
): readonly RunLabel[] {
  const taken = [...blocked];
  return runs.flatMap(({ run, points }) => {
    const says = `${run.letter}${numbers.get(run.id) ?? ''}${run.buried === 'unknown' ? '?' : ''}`;
    const rects = shares.map((share) => rectAbout(along(points, share), textWidth(says, size) + 1, size + 0.7));
    const rect = rects.find((r) => !taken.some((t) => overlaps(r, t)));
    if (rect === undefined) return [];
    taken.push(rect);
    return [{ rect, text: says }];
  });
}

export function drawRunLabel({ rect, text: says }: RunLabel): readonly Svg[] {
  return [
    element('rect', { ...rect, rx: 0.8, fill: '#ffffff', stroke: ink, 'stroke-width': 0.12 }),
    text(says, { x: rect.x + 0.5, y: rect.y + size + 0.05, 'font-size': size, fill: ink }),
  ];
}

/** Point at a share of the length. */
function along(points: readonly Point[], share: number): Point {
  let left = lengthOf(points) * share;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const piece = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (piece >= left && piece > 0)
      return [a[0] + ((b[0] - a[0]) * left) / piece, a[1] + ((b[1] - a[1]) * left) / piece];
    left -= piece;
  }
  return points.at(-1)!;
}

function lengthOf(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p[0] - points[i]![0], p[1] - points[i]![1]), 0);
}
