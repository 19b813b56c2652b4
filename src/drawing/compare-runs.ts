import { drawSign, type Fate, fateInk, fateStroke } from './compare-fate.ts';
import type { DrawnRun, RunLabel } from './draw-runs.ts';
import { element, type Point, polyline, type Svg, text } from './svg.ts';

const signEveryMm = 17;
const signMm = 1.5;
const order: readonly Fate[] = ['same', 'removed', 'changed', 'added'];

/** Runs with the stroke of what became of them and its sign along them; what stayed lies beneath. */
export function drawFateRuns(runs: readonly DrawnRun[], fates: ReadonlyMap<string, Fate>): readonly Svg[] {
  const fateOf = (r: DrawnRun): Fate => fates.get(r.run.id) ?? 'same';
  return order.flatMap((fate) =>
    runs
      .filter((r) => fateOf(r) === fate)
      .flatMap(({ run, points }) => [
        polyline(points, fateStroke(fate, run.look === 'metal')),
        ...signPlaces(points).flatMap((at) => drawSign(fate, at, signMm)),
      ]),
  );
}

/** One in the middle of every stretch of equal length. */
function signPlaces(points: readonly Point[]): readonly Point[] {
  const pieces = points.slice(1).map((b, i) => ({ a: points[i]!, b }));
  const lengths = pieces.map(({ a, b }) => Math.hypot(b[0] - a[0], b[1] - a[1]));
  const total = lengths.reduce((sum, l) => sum + l, 0);
  const count = Math.max(1, Math.floor(total / signEveryMm));
  return Array.from({ length: count }, (_, i) => along(pieces, lengths, (total * (i + 0.5)) / count));
}

function along(
  pieces: readonly { readonly a: Point; readonly b: Point }[],
  lengths: readonly number[],
  distance: number,
): Point {
  let left = distance;
  for (const [i, { a, b }] of pieces.entries()) {
    const length = lengths[i]!;
    if (left <= length && length > 0) {
      const share = left / length;
      return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
    }
    left -= length;
  }
  return pieces.at(-1)!.b;
}

const size = 2.2;

/** The number of a run in the ink of what became of it. */
export function drawFateRunLabel({ rect, text: says }: RunLabel, fate: Fate): readonly Svg[] {
  const ink = fateInk[fate];
  return [
    element('rect', { ...rect, rx: 0.8, fill: '#ffffff', stroke: ink, 'stroke-width': fate === 'same' ? 0.12 : 0.25 }),
    text(says, {
      x: rect.x + 0.5,
      y: rect.y + size + 0.05,
      'font-size': size,
      'font-weight': fate === 'same' ? 'normal' : 'bold',
      fill: ink,
    }),
  ];
}
