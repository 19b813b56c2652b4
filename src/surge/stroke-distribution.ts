import { normalAbove, normalExceededBy } from '../math/normal-distribution.ts';
import { positive } from './positive.ts';

/** How a figure of strokes is spread, by share of strokes that exceed it. Figures in one unit throughout. */
export type StrokeDistribution =
  | { readonly kind: 'lognormal'; readonly median: number; readonly sigmaLn: number }
  /** Two lognormal lines, one below and one above a figure. */
  | { readonly kind: 'two-slopes'; readonly joint: number; readonly below: Lognormal; readonly above: Lognormal }
  /** 1 / (1 + (figure / median)^power). */
  | { readonly kind: 'power'; readonly median: number; readonly power: number }
  /** Points as printed, figure and share that exceeds it, rising; straight lines on lognormal paper between them. */
  | { readonly kind: 'points'; readonly points: readonly (readonly [figure: number, exceededBy: number])[] };

export interface Lognormal {
  readonly median: number;
  readonly sigmaLn: number;
}

/** Share of strokes that exceed a figure; null where the publication says nothing (outside its points). */
export function shareAbove(distribution: StrokeDistribution, figure: number): number | null {
  positive(figure, 'figure');
  switch (distribution.kind) {
    case 'lognormal':
      return lognormalAbove(distribution, figure);
    case 'two-slopes':
      return lognormalAbove(figure < distribution.joint ? distribution.below : distribution.above, figure);
    case 'power':
      return 1 / (1 + (figure / distribution.median) ** distribution.power);
    case 'points': {
      const deviate = along(onPaper(distribution.points), Math.log(figure));
      return deviate === null ? null : normalAbove(deviate);
    }
  }
}

/** The figure that a share of strokes exceeds, 0 to 1 without the ends; null where the publication says nothing. */
export function figureExceededBy(distribution: StrokeDistribution, share: number): number | null {
  const deviate = normalExceededBy(share);
  switch (distribution.kind) {
    case 'lognormal':
      return lognormalAt(distribution, deviate);
    case 'two-slopes': {
      const { joint, below, above } = distribution;
      const low = lognormalAt(below, deviate);
      // the two lines miss each other by a tenth of a percent of strokes at the joint
      return low < joint ? low : Math.max(joint, lognormalAt(above, deviate));
    }
    case 'power':
      return distribution.median * (1 / share - 1) ** (1 / distribution.power);
    case 'points': {
      const turned = onPaper(distribution.points).map(([figure, at]) => [at, figure] as const);
      const logFigure = along(turned, deviate);
      return logFigure === null ? null : Math.exp(logFigure);
    }
  }
}

function lognormalAbove({ median, sigmaLn }: Lognormal, figure: number): number {
  return normalAbove(Math.log(figure / median) / sigmaLn);
}

function lognormalAt({ median, sigmaLn }: Lognormal, deviate: number): number {
  return median * Math.exp(sigmaLn * deviate);
}

type Line = readonly (readonly [x: number, y: number])[];

/** Logarithm of the figure against the normal deviate of its share: both rise. */
function onPaper(points: readonly (readonly [figure: number, exceededBy: number])[]): Line {
  return points.map(([figure, exceededBy]) => [Math.log(figure), normalExceededBy(exceededBy)]);
}

/** Straight lines between points; null outside them, but for the last roundings. */
function along(line: Line, x: number): number | null {
  const slack = 1e-9 * (1 + Math.abs(x));
  if (x < line[0]![0] - slack || x > line.at(-1)![0] + slack) return null;
  let next = 1;
  while (next < line.length - 1 && line[next]![0] < x) next++;
  const [[x0, y0], [x1, y1]] = [line[next - 1]!, line[next]!];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
