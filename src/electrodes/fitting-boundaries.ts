import type { TwoLayerRodFit } from './two-layer-rod.ts';

/** Boundaries are tried at this many places between two neighbouring depths of reading, and above the first. */
const placesBetween = 8;

/**
 * Boundaries whose two-layer soil is off by at most `errorShare` at every reading, from the least depth to the greatest. Tried
 * evenly between neighbouring depths; where three and more readings leave little room, the best place is looked for, and
 * the ends of what fits, to a hundredth of a step.
 */
export function fittingBoundaries(
  fitAt: (boundaryM: number) => TwoLayerRodFit | null,
  readingDepthsM: readonly number[],
  errorShare: number,
): readonly TwoLayerRodFit[] {
  const tried: Tried[] = placesIn(readingDepthsM).map((boundaryM) => tryAt(fitAt, boundaryM));
  // two readings are met everywhere or nowhere
  if (readingDepthsM.length > 2) {
    tried.push(...bestPlaces(tried, fitAt, errorShare));
    tried.sort((a, b) => a.boundaryM - b.boundaryM);
    tried.push(...endsOf(tried, fitAt, errorShare));
    tried.sort((a, b) => a.boundaryM - b.boundaryM);
  }
  return tried.flatMap(({ fit }) => (fit !== null && fit.worstShare <= errorShare ? [fit] : []));
}

interface Tried {
  readonly boundaryM: number;
  readonly fit: TwoLayerRodFit | null;
}

function tryAt(fitAt: (boundaryM: number) => TwoLayerRodFit | null, boundaryM: number): Tried {
  return { boundaryM, fit: fitAt(boundaryM) };
}

function shareOf({ fit }: Tried): number {
  return fit?.worstShare ?? Number.POSITIVE_INFINITY;
}

function placesIn(readingDepthsM: readonly number[]): readonly number[] {
  const shares = Array.from({ length: placesBetween }, (_, at) => (at + 1) / (placesBetween + 1));
  return readingDepthsM.flatMap((footM, at) => {
    const topM = readingDepthsM[at - 1] ?? 0;
    return shares.map((share) => topM + share * (footM - topM));
  });
}

/** Better places between the neighbours of each one that is better than they are, and not good enough. */
function bestPlaces(
  tried: readonly Tried[],
  fitAt: (boundaryM: number) => TwoLayerRodFit | null,
  errorShare: number,
): readonly Tried[] {
  return tried.flatMap((here, at) => {
    const [before, after] = [tried[at - 1], tried[at + 1]];
    const share = shareOf(here);
    const isLeast = share <= (before ? shareOf(before) : share) && share <= (after ? shareOf(after) : share);
    if (!Number.isFinite(share) || share <= errorShare || !isLeast) return [];
    return [leastBetween(before ?? here, after ?? here, fitAt)];
  });
}

/** By thirds: the share falls to its least and rises again. */
function leastBetween(from: Tried, to: Tried, fitAt: (boundaryM: number) => TwoLayerRodFit | null): Tried {
  let [low, high] = [from.boundaryM, to.boundaryM];
  for (let step = 0; step < 12; step++) {
    const third = (high - low) / 3;
    if (shareOf(tryAt(fitAt, low + third)) < shareOf(tryAt(fitAt, high - third))) high -= third;
    else low += third;
  }
  return tryAt(fitAt, (low + high) / 2);
}

/** Where what fits ends, between a place that fits and a neighbour that does not. */
function endsOf(
  tried: readonly Tried[],
  fitAt: (boundaryM: number) => TwoLayerRodFit | null,
  errorShare: number,
): readonly Tried[] {
  return tried.slice(1).flatMap((after, at) => {
    const before = tried[at]!;
    const [first, second] = [shareOf(before) <= errorShare, shareOf(after) <= errorShare];
    if (first === second) return [];
    let [inside, outside] = first ? [before, after] : [after, before];
    for (let step = 0; step < 7; step++) {
      const middle = tryAt(fitAt, (inside.boundaryM + outside.boundaryM) / 2);
      if (shareOf(middle) <= errorShare) inside = middle;
      else outside = middle;
    }
    return [inside];
  });
}
