import type { DrawnRun } from './draw-runs.ts';
import type { Point } from './svg.ts';

const samePlaceMm = 4.8;
const laneMm = 2.4;

/** Runs with bends between the same two places, their bends moved apart so that wide lines do not lie on one another. */
export function inLanes(runs: readonly DrawnRun[]): readonly DrawnRun[] {
  const bundles: DrawnRun[][] = [];
  for (const r of runs.filter((one) => one.points.length > 2)) {
    const bundle = bundles.find((b) => joinSamePlaces(b[0]!, r));
    if (bundle === undefined) bundles.push([r]);
    else bundle.push(r);
  }
  const moved = new Map(
    bundles.flatMap((b) => bySide(b).map((r, i) => [r.run, moveBends(r, b[0]!, i - (b.length - 1) / 2)] as const)),
  );
  return runs.map((r) => moved.get(r.run) ?? r);
}

function joinSamePlaces(a: DrawnRun, b: DrawnRun): boolean {
  const near = (p: Point, q: Point) => Math.hypot(p[0] - q[0], p[1] - q[1]) < samePlaceMm;
  const [[a1, a2], [b1, b2]] = [endsOf(a), endsOf(b)];
  return (near(a1, b1) && near(a2, b2)) || (near(a1, b2) && near(a2, b1));
}

/** From one side of the bundle to the other, so that none has to cross its neighbour. */
function bySide(bundle: readonly DrawnRun[]): readonly DrawnRun[] {
  const [[fx, fy], [tx, ty]] = endsOf(bundle[0]!);
  const aside = ({ points }: DrawnRun) =>
    points.slice(1, -1).reduce((sum, [x, y]) => sum + (x - fx) * (fy - ty) + (y - fy) * (tx - fx), 0) /
    (points.length - 2);
  return [...bundle].sort((a, b) => aside(a) - aside(b));
}

/** Across the straight line between the ends of the bundle's first; a run that is closed has none. */
function moveBends(r: DrawnRun, first: DrawnRun, lane: number): DrawnRun {
  const [[fx, fy], [tx, ty]] = endsOf(first);
  const length = Math.hypot(tx - fx, ty - fy);
  if (lane === 0 || length < samePlaceMm) return r;
  const [dx, dy] = [((fy - ty) / length) * lane * laneMm, ((tx - fx) / length) * lane * laneMm];
  const last = r.points.length - 1;
  return { ...r, points: r.points.map(([x, y], i) => (i === 0 || i === last ? [x, y] : [x + dx, y + dy])) };
}

function endsOf({ points }: DrawnRun): readonly [Point, Point] {
  return [points[0]!, points.at(-1)!];
}
