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
const samePlaceMm = 4.8;
const laneMm = 1.5;
const size = 2.2;
const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];

/** Runs on paper; one that would be shorter than a symbol is left to the schedules. */
export function runsOnPaper(runs: readonly Run[], scale: PlanScale): readonly DrawnRun[] {
  const all = runs.map((run) => ({ run, points: apart(run.points.map(scale.toPaper)) }));
  return sideBySide(all.filter(({ points }) => lengthOf(points) >= leastMm));
}

/** Without points that lie so close to the one before that no reader could tell them apart. */
function apart(points: readonly Point[]): readonly Point[] {
  const kept: Point[] = [];
  for (const p of points) {
    const last = kept.at(-1);
    if (last === undefined || Math.hypot(p[0] - last[0], p[1] - last[1]) >= samePlaceMm) kept.push(p);
  }
  return kept;
}

/** Straight runs between the same two places, fanned out about the straight line; others stay as they are. */
function sideBySide(runs: readonly DrawnRun[]): readonly DrawnRun[] {
  const bundles: DrawnRun[][] = [];
  for (const r of runs) {
    const bundle = isStraight(r) ? bundles.find((b) => joinSamePlaces(b[0]!, r)) : undefined;
    if (bundle === undefined) bundles.push([r]);
    else bundle.push(r);
  }
  const fanned = bundles.flatMap((b) => b.map((r, i) => fan(r, b[0]!, i - (b.length - 1) / 2)));
  return runs.map((r) => fanned.find((f) => f.run === r.run)!);
}

function isStraight({ points, run }: DrawnRun): boolean {
  return points.length === 2 && run.look !== 'metal';
}

function joinSamePlaces(a: DrawnRun, b: DrawnRun): boolean {
  const near = (p: Point, q: Point) => Math.hypot(p[0] - q[0], p[1] - q[1]) < samePlaceMm;
  const [[a1, a2], [b1, b2]] = [endsOf(a), endsOf(b)];
  return isStraight(a) && ((near(a1, b1) && near(a2, b2)) || (near(a1, b2) && near(a2, b1)));
}

/** Leaves its own ends, and runs `lane` lanes beside the line of the first of its bundle. */
function fan(r: DrawnRun, first: DrawnRun, lane: number): DrawnRun {
  if (lane === 0 || !isStraight(r)) return r;
  const [[fx, fy], [tx, ty]] = endsOf(first);
  const length = Math.hypot(tx - fx, ty - fy);
  const beside: Point = [((fy - ty) / length) * lane * laneMm, ((tx - fx) / length) * lane * laneMm];
  const [from, to] = endsOf(r);
  const at = (share: number): Point => [
    from[0] + (to[0] - from[0]) * share + beside[0],
    from[1] + (to[1] - from[1]) * share + beside[1],
  ];
  return { run: r.run, points: [from, at(0.12), at(0.88), to] };
}

function endsOf({ points }: DrawnRun): readonly [Point, Point] {
  return [points[0]!, points.at(-1)!];
}

/** Wide pale metal first, so that wires stay on top of it. */
export function drawRuns(runs: readonly DrawnRun[]): readonly Svg[] {
  const metalFirst = [...runs.filter((r) => r.run.look === 'metal'), ...runs.filter((r) => r.run.look !== 'metal')];
  return metalFirst.map(({ run, points }) => polyline(points, runStroke(run.look, run.buried)));
}

export interface RunLabel {
  readonly id: string;
  readonly rect: Rect;
  readonly text: string;
}

/** Number of each run on the run itself, where it covers nothing; the middle is tried first. A guy has its at its anchor. */
export function placeRunLabels(
  runs: readonly DrawnRun[],
  numbers: ReadonlyMap<string, string>,
  blocked: readonly Rect[],
): readonly RunLabel[] {
  const taken = [...blocked];
  const numbered = runs.filter((r) => r.run.look !== 'guy');
  return numbered.flatMap(({ run, points }) => {
    const says = `${run.letter}${numbers.get(run.id) ?? ''}${run.buried === 'unknown' ? '?' : ''}`;
    const rects = shares.map((share) => rectAbout(along(points, share), textWidth(says, size) + 1, size + 0.7));
    const rect = rects.find((r) => !taken.some((t) => overlaps(r, t)));
    if (rect === undefined) return [];
    taken.push(rect);
    return [{ id: run.id, rect, text: says }];
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
