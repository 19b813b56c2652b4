import type { DrawnRun } from './draw-runs.ts';
import { runStroke } from './plan-runs.ts';
import type { StrikeCurrent } from './strike-currents.ts';
import { type Attributes, decimals, type Point, polyline, type Svg } from './svg.ts';

export const currentColour = '#123f5c';
const widestMm = 2;
const narrowestMm = 0.35;
/** White on both sides of a wide line, so that two side by side stay two. */
const edgeMm = 0.3;

/** How wide a line stands for a current: as the current to the greatest, but never so thin that it is not seen. */
export function currentWidth(currentA: number, greatestA: number): number {
  return Math.max(narrowestMm, (widestMm * currentA) / greatestA);
}

/** Runs without a current thin and grey, then those with one, the widest lowest. Dashed in the soil as on the plan. */
export function drawStrikeRuns(
  runs: readonly DrawnRun[],
  currents: ReadonlyMap<string, StrikeCurrent>,
  greatestA: number,
): readonly Svg[] {
  const along = (r: DrawnRun) => currents.get(r.run.id)?.alongA ?? null;
  const idle = runs.filter((r) => along(r) === null);
  const busy = runs.filter((r) => along(r) !== null).sort((a, b) => along(b)! - along(a)!);
  return [
    ...idle.map((r) => polyline(r.points, idleStroke(r))),
    ...busy.flatMap((r) => drawBusy(r, currentWidth(along(r)!, greatestA))),
  ];
}

/** Bare metal in the soil keeps the look that it has on the plan: what leaves it leaves all along. */
function idleStroke({ run }: DrawnRun): Attributes {
  if (run.look === 'bare') return runStroke('bare', run.buried);
  return { ...runStroke(run.look, run.buried), stroke: '#a9b3bc', 'stroke-width': run.look === 'metal' ? 0.8 : 0.2 };
}

function drawBusy({ run, points }: DrawnRun, widthMm: number): readonly Svg[] {
  const edge = { stroke: '#ffffff', 'stroke-width': widthMm + 2 * edgeMm, 'stroke-linejoin': 'round' };
  return [polyline(points, edge), polyline(points, currentStroke(widthMm, run.buried === 'yes'))];
}

export function currentStroke(widthMm: number, isBuried: boolean): Attributes {
  const dash = isBuried ? { 'stroke-dasharray': `${decimals(2 + 2 * widthMm)} ${decimals(0.7 + widthMm * 0.35)}` } : {};
  return { stroke: currentColour, 'stroke-width': widthMm, 'stroke-linejoin': 'round', ...dash };
}

/** The middle of a run, where its label belongs. */
export function middleOf(points: readonly Point[]): Point {
  const lengths = points.slice(1).map((p, i) => Math.hypot(p[0] - points[i]![0], p[1] - points[i]![1]));
  let left = lengths.reduce((sum, l) => sum + l, 0) / 2;
  for (const [i, length] of lengths.entries()) {
    const [a, b] = [points[i]!, points[i + 1]!];
    if (length >= left && length > 0)
      return [a[0] + ((b[0] - a[0]) * left) / length, a[1] + ((b[1] - a[1]) * left) / length];
    left -= length;
  }
  return points.at(-1)!;
}
