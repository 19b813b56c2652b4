import { chiSquareLimit } from '../math/chi-square.ts';
import type { SquaresFit, SquaresProblem } from '../math/least-squares-fit.ts';
import { leastSquaresFit } from '../math/least-squares-fit.ts';
import { along, type Direction } from './fit-held.ts';
import { type FitData, fitProblem } from './fit-problem.ts';
import { fitRange } from './fit-range.ts';
import type { FittedFigure, FittedLayer, TradeOff } from './sounding-fit.ts';

export interface FitFigures {
  readonly logs: Float64Array;
  readonly layers: readonly FittedLayer[];
  readonly tradeOffs: readonly TradeOff[];
  readonly noiseShare: number;
}

/** A range with ends further apart than this settles nothing. */
const mostTimes = 10;

/**
 * The layers of the best of some fits, each figure with its 95 % range, and what is settled of a layer of which a figure is
 * not. Ranges by profile likelihood for the noise, or for what the fit leaves over where that is more.
 */
export function fitFigures(data: FitData, fits: readonly SquaresFit[], noiseShare: number): FitFigures {
  const layers = (fits[0]!.parameters.length + 1) / 2;
  const spare = data.measuredOhmM.length - fits[0]!.parameters.length;
  const shown = spare > 0 ? Math.sqrt(fits[0]!.sumOfSquares / spare) : 0;
  const asked: Asked = {
    problem: fitProblem(data, layers),
    fits,
    noiseShare: Math.max(noiseShare, shown),
    better: null,
  };
  const fitted = Array.from(
    { length: layers },
    (_, at): FittedLayer => ({
      resistivityOhmM: figureAlong(asked, { first: at }),
      thicknessM: at === layers - 1 ? null : figureAlong(asked, { first: layers + at }),
    }),
  );
  const tradeOffs = fitted.flatMap((layer, at) => tradeOffOf(asked, layer, at));
  // ranges belong to the best fit: one found on the way begins anew
  if (asked.better !== null) return fitFigures(data, [asked.better, ...fits], noiseShare);
  return { logs: fits[0]!.parameters, layers: fitted, tradeOffs, noiseShare: asked.noiseShare };
}

interface Asked {
  readonly problem: SquaresProblem;
  readonly fits: readonly SquaresFit[];
  readonly noiseShare: number;
  better: SquaresFit | null;
}

function figureAlong(asked: Asked, direction: Direction): FittedFigure {
  const { problem, fits, noiseShare } = asked;
  const limit = fits[0]!.sumOfSquares + chiSquareLimit(1, 0.95) * noiseShare ** 2;
  const { low, high, better } = fitRange(problem, fits, direction, limit);
  if (better !== null) asked.better = leastSquaresFit(problem, better.parameters);
  return {
    value: Math.exp(along(direction, fits[0]!.parameters)),
    low: low === null ? null : Math.exp(low),
    high: high === null ? null : Math.exp(high),
    resolved: low !== null && high !== null && high - low <= Math.log(mostTimes),
  };
}

/** Of thickness times and over resistivity the narrower, where one of the two figures is open and that is not. */
function tradeOffOf(asked: Asked, { resistivityOhmM, thicknessM }: FittedLayer, layer: number): readonly TradeOff[] {
  if (thicknessM === null || (resistivityOhmM.resolved && thicknessM.resolved)) return [];
  const layers = (asked.problem.low.length + 1) / 2;
  const direction = { first: layers + layer, second: layer };
  const both: readonly TradeOff[] = [
    { layer, of: 'thickness times resistivity', range: figureAlong(asked, { ...direction, sign: 1 }) },
    { layer, of: 'thickness over resistivity', range: figureAlong(asked, { ...direction, sign: -1 }) },
  ];
  const settled = both.filter(({ range }) => range.resolved);
  return settled.sort((a, b) => widthOf(a.range) - widthOf(b.range)).slice(0, 1);
}

function widthOf({ low, high }: FittedFigure): number {
  return Math.log(high! / low!);
}
