import { chiSquareLimit } from '../math/chi-square.ts';
import type { SquaresFit } from '../math/least-squares-fit.ts';
import { fitLayers } from './fit-layers.ts';
import type { FitData } from './fit-problem.ts';
import type { FitReason, TriedLayers } from './sounding-fit.ts';

export type LayerCount = TriedLayers['layers'];

/** Soils of the number of layers that the readings carry, the best first; null: none, and why. */
export interface LayerChoice {
  readonly layers: LayerCount | null;
  readonly fits: readonly SquaresFit[];
  readonly tried: readonly TriedLayers[];
  readonly reason: FitReason | null;
}

export interface ChoiceReadings {
  readonly data: FitData;
  readonly noiseShare: number;
  /** How many different ones. */
  readonly spacings: number;
}

/** Spacings that layers need: two as many as they have figures; three one more, or they fit anything. */
const spacingsNeeded: Readonly<Record<LayerCount, number>> = { 1: 2, 2: 3, 3: 6 };

/**
 * As few layers as the readings allow, by what a soil leaves over in units of their noise. Two layers rather than one where
 * that falls by more than chance does once in a hundred (likelihood ratio); three rather than two where two leave more than
 * chance does once in twenty and three markedly less. A soil that leaves more than chance does once in a thousand is refused.
 * `only`: this number of layers, whether another would do or not.
 *
 * Source: S. S. Wilks, Annals of Mathematical Statistics 9 (1938), for the ratio; sum of squares against chi-square: W. H. Press
 * and others, Numerical Recipes, section 15.1 (both from memory). The levels are our own.
 */
export function chooseLayers(readings: ChoiceReadings, only: LayerCount | null = null): LayerChoice {
  if (only !== null) return settle(readings, [attempt(readings, only)], only);
  const tries: Attempt[] = [attempt(readings, 1), attempt(readings, 2)];
  const [one, two] = tries as [Attempt, Attempt];
  const first = isMarkedlyBetter(two, one) ? two : one;
  const isEnough = first.left <= chiSquareLimit(first.freedom, 0.95);
  tries.push(isEnough ? untried(3, { key: 'not needed', layers: first.layers }) : attempt(readings, 3));
  return settle(readings, tries, isMarkedlyBetter(tries[2]!, first) ? 3 : first.layers);
}

interface Attempt {
  readonly layers: LayerCount;
  readonly fits: readonly SquaresFit[];
  /** Least sum of squares, in units of the noise squared. */
  readonly left: number;
  /** Readings beyond as many as there are figures; at least 1, so that what cannot be met exactly is seen. */
  readonly freedom: number;
  readonly misfitShare: number | null;
  /** Why it was not tried. */
  readonly why: FitReason | null;
}

function untried(layers: LayerCount, why: FitReason): Attempt {
  return { layers, fits: [], left: Number.POSITIVE_INFINITY, freedom: 1, misfitShare: null, why };
}

function attempt({ data, noiseShare, spacings }: ChoiceReadings, layers: LayerCount): Attempt {
  const needed = spacingsNeeded[layers];
  if (spacings < needed) return untried(layers, { key: 'too few spacings', spacings, needed });
  const fits = fitLayers(data, layers);
  const { parameters, sumOfSquares } = fits[0]!;
  return {
    layers,
    fits,
    left: sumOfSquares / noiseShare ** 2,
    freedom: Math.max(1, data.measuredOhmM.length - parameters.length),
    misfitShare: misfitShareOf(data, parameters),
    why: null,
  };
}

/** Root mean square of (fitted - measured) / measured. */
export function misfitShareOf({ measuredOhmM, model }: FitData, logs: Float64Array): number {
  const fitted = model.at(logs);
  const sum = measuredOhmM.reduce((total, ohmM, i) => total + (fitted[i]! / ohmM - 1) ** 2, 0);
  return Math.sqrt(sum / measuredOhmM.length);
}

/** By the likelihood ratio; each layer more has two figures more. */
function isMarkedlyBetter(more: Attempt, fewer: Attempt): boolean {
  if (more.fits.length === 0) return false;
  return fewer.left - more.left > chiSquareLimit(2 * (more.layers - fewer.layers), 0.99);
}

function settle(readings: ChoiceReadings, tries: readonly Attempt[], layers: LayerCount): LayerChoice {
  const best = tries.find((one) => one.layers === layers)!;
  const isRefused = best.left > chiSquareLimit(best.freedom, 0.999);
  const tried = tries.map((one): TriedLayers => {
    const { misfitShare } = one;
    const whyNot = one === best && !isRefused ? null : whyNotTaken(readings, one, best);
    return { layers: one.layers, misfitShare, whyNot };
  });
  if (!isRefused) return { layers, fits: best.fits, tried, reason: null };
  // more spacings are what is missing where they kept more layers from being tried
  const missing = tried.find(({ whyNot }) => whyNot?.key === 'too few spacings')?.whyNot;
  return { layers: null, fits: [], tried, reason: missing ?? misfitReason(readings, best) };
}

function whyNotTaken(readings: ChoiceReadings, one: Attempt, best: Attempt): FitReason {
  if (one.why !== null) return one.why;
  if (one.layers > best.layers) return { key: 'no better', layers: best.layers };
  const doesFit = one.left <= chiSquareLimit(one.freedom, 0.95);
  return doesFit ? { key: 'markedly worse', layers: best.layers } : misfitReason(readings, one);
}

function misfitReason({ data, noiseShare }: ChoiceReadings, { misfitShare, freedom, left }: Attempt): FitReason {
  // the limit that it is beyond
  const level = left > chiSquareLimit(freedom, 0.999) ? 0.999 : 0.95;
  const limitShare = noiseShare * Math.sqrt(chiSquareLimit(freedom, level) / data.measuredOhmM.length);
  return { key: 'misfit', misfitShare: misfitShare!, limitShare };
}
