import type { SquaresProblem } from '../math/least-squares-fit.ts';
import { type SoundingModel, soundingModel } from './apparent-resistivity.ts';
import { resistivityLimitsOhmM, thinnestLayerM } from './layered-soil.ts';
import { pinDistances, type SoundingPins } from './sounding-pins.ts';

/** How readings weigh: by their share of themselves, or in ohm metre, where the greatest say most. */
export type FitWeighting = 'relative' | 'absolute';

/** What is fitted: readings as apparent resistivities, and what bounds the layers that are looked for. */
export interface FitData {
  readonly measuredOhmM: Float64Array;
  /** A residual is (fitted - measured) / weight: the reading itself, or the mean of all. */
  readonly weightOhmM: Float64Array;
  readonly model: SoundingModel;
  /** Shortest distance from a current to a potential pin: of the readings, the least and the greatest. */
  readonly nearestM: number;
  readonly farthestM: number;
  /** Layers are looked for between these. */
  readonly ohmM: { readonly low: number; readonly high: number };
  readonly thickM: { readonly low: number; readonly high: number };
}

/** A boundary shallower than this share of the shortest spacing, or deeper than this multiple of the longest, is not seen. */
const shallowest = 0.05;
const deepest = 5;
/** A layer this many times better or worse than every reading looks like one without end of that. */
const farthestOff = 200;

export function fitData(
  pins: readonly SoundingPins[],
  measuredOhmM: readonly number[],
  weighting: FitWeighting,
): FitData {
  const reachM = pins.map((p) => Math.min(...pinDistances(p).map(({ distanceM }) => distanceM)));
  const [nearestM, farthestM] = [Math.min(...reachM), Math.max(...reachM)];
  const deepestPinM = Math.max(...pins.map(({ pinDepthM }) => pinDepthM));
  const thinnestM = Math.max(shallowest * nearestM, deepestPinM, thinnestLayerM);
  const mean = measuredOhmM.reduce((sum, ohmM) => sum + ohmM, 0) / measuredOhmM.length;
  return {
    measuredOhmM: Float64Array.from(measuredOhmM),
    weightOhmM: Float64Array.from(measuredOhmM, (ohmM) => (weighting === 'relative' ? ohmM : mean)),
    model: soundingModel(pins, thinnestM),
    nearestM,
    farthestM,
    ohmM: {
      low: Math.max(resistivityLimitsOhmM.low, Math.min(...measuredOhmM) / farthestOff),
      high: Math.min(resistivityLimitsOhmM.high, Math.max(...measuredOhmM) * farthestOff),
    },
    thickM: { low: thinnestM, high: Math.max(deepest * farthestM, 2 * thinnestM) },
  };
}

/** Unknowns are logarithms: of the resistivities from the surface down, then of the thicknesses. */
export function fitProblem(data: FitData, layers: number): SquaresProblem {
  const bound = (side: 'low' | 'high'): Float64Array =>
    Float64Array.from({ length: 2 * layers - 1 }, (_, at) => Math.log((at < layers ? data.ohmM : data.thickM)[side]));
  const { measuredOhmM, weightOhmM, model } = data;
  return {
    low: bound('low'),
    high: bound('high'),
    residuals: (logs) => model.at(logs).map((ohmM, i) => (ohmM - measuredOhmM[i]!) / weightOhmM[i]!),
    slopes: (logs) => model.withSlopes(logs).slopes.map((column) => column.map((s, i) => s / weightOhmM[i]!)),
  };
}
