import { leastSquaresFit, type SquaresFit } from '../math/least-squares-fit.ts';
import { type FitData, fitProblem } from './fit-problem.ts';

/**
 * Soils of a number of layers that fit the readings better than all near them, the best first. Searched downhill from many
 * starts: resistivities as read at the shortest and longest spacing (and below, between and above the readings for a middle
 * layer), boundaries spread over what the spacings see. At most six.
 */
export function fitLayers(data: FitData, layers: number): readonly SquaresFit[] {
  const problem = fitProblem(data, layers);
  const rough = startsFor(data, layers).map((start) => leastSquaresFit(problem, start, roughSteps));
  const fits = bestApart(rough).map((fit) => leastSquaresFit(problem, fit.parameters));
  return bestApart(fits);
}

const roughSteps = 20;
const mostKept = 6;
/** Boundaries are begun at this many depths. */
const depthStarts = 4;

function bestApart(fits: readonly SquaresFit[]): readonly SquaresFit[] {
  const kept: SquaresFit[] = [];
  for (const fit of [...fits].sort((a, b) => a.sumOfSquares - b.sumOfSquares)) {
    if (kept.length < mostKept && kept.every((other) => farApart(fit, other))) kept.push(fit);
  }
  return kept;
}

function startsFor(data: FitData, layers: number): readonly (readonly number[])[] {
  const { measuredOhmM } = data;
  const logs = Array.from(measuredOhmM, Math.log);
  const [top, last, mean] = [logs[0]!, logs.at(-1)!, logs.reduce((sum, log) => sum + log, 0) / logs.length];
  if (layers === 1) return [[mean]];
  const depths = depthsM(data);
  if (layers === 2) return depths.map((depthM) => [top, last, Math.log(depthM)]);
  const middles = [Math.min(...logs) - 1, mean, Math.max(...logs) + 1];
  return middles.flatMap((middle) =>
    depths.flatMap((first) => depths.map((second) => [top, middle, last, Math.log(first), Math.log(second)])),
  );
}

function depthsM({ nearestM, farthestM }: FitData): readonly number[] {
  const [from, to] = [Math.log(nearestM / 2), Math.log(farthestM)];
  return Array.from({ length: depthStarts }, (_, at) => Math.exp(from + ((at + 0.5) * (to - from)) / depthStarts));
}

/** Places along one valley, where only a product or quotient is settled, are as good as each other to the last figure. */
function farApart(a: SquaresFit, b: SquaresFit): boolean {
  const isAsGood = Math.abs(a.sumOfSquares - b.sumOfSquares) <= 1e-4 * b.sumOfSquares;
  return !isAsGood && a.parameters.some((p, at) => Math.abs(p - b.parameters[at]!) > 0.05);
}
