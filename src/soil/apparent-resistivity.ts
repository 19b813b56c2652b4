import { sentBackByLayers } from './apparent-resistivity-kernel.ts';
import { type ApparentWeights, apparentWeights } from './apparent-resistivity-weights.ts';
import type { LayeredSoil } from './layered-soil.ts';
import { pinFactorPerM, type SoundingPins } from './sounding-pins.ts';

/**
 * Apparent resistivities (ohm metre) that four pins would read over a soil, one for each arrangement of pins; any number of
 * layers. Potential of a point at the surface: V(r) = rho1 I / (2 pi) (1/r + 2 integral of K(lambda) J0(lambda r) dlambda).
 * Good to 1e-7 of the resistivity of the first layer, and some times that where it stands far above its neighbour.
 * Throws RangeError, in words for a programmer, for pins deeper than the first layer or whose readings say nothing.
 *
 * Source: E. D. Sunde, Earth Conduction Effects in Transmission Systems (1949), chapter 2 (from memory).
 */
export function apparentResistivity(soil: LayeredSoil, pins: readonly SoundingPins[]): readonly number[] {
  const topM = soil.thicknessM[0];
  if (topM === undefined) return pins.map(() => soil.resistivityOhmM[0]!);
  return Array.from(soundingModel(pins, topM).at(logsOf(soil)));
}

/** The same for many soils under the same pins: what is worked out once is worked out when this is made. */
export interface SoundingModel {
  /** Apparent resistivities for logarithms of n resistivities and then of n - 1 thicknesses. Written over by the next call. */
  readonly at: (logs: ArrayLike<number>) => Float64Array;
  /** Their slopes by each of the logs, after `at` has been asked for these. Written over by the next call. */
  readonly withSlopes: (logs: ArrayLike<number>) => { readonly ohmM: Float64Array; readonly slopes: Float64Array[] };
}

export function soundingModel(pins: readonly SoundingPins[], thinnestTopM: number): SoundingModel {
  for (const p of pins) {
    if (!(p.pinDepthM >= 0 && p.pinDepthM <= thinnestTopM)) throw new RangeError('pins deeper than the first layer');
    if (!Number.isFinite(1 / pinFactorPerM(p))) throw new RangeError('pins that read nothing');
  }
  const weights = apparentWeights(pins, thinnestTopM);
  const sent = new Float64Array(weights.lambdas.length);
  const ohmM = new Float64Array(pins.length);
  const at = (logs: ArrayLike<number>): Float64Array => {
    sentBackByLayers(logs, weights.lambdas, sent, null);
    fillOhmM(weights, Math.exp(logs[0]!), sent, ohmM);
    return ohmM;
  };
  const withSlopes = (logs: ArrayLike<number>): { ohmM: Float64Array; slopes: Float64Array[] } => {
    const bySent = Array.from({ length: logs.length }, () => new Float64Array(sent.length));
    sentBackByLayers(logs, weights.lambdas, sent, bySent);
    const topOhmM = Math.exp(logs[0]!);
    fillOhmM(weights, topOhmM, sent, ohmM);
    const slopes = bySent.map((column, log) => slopeOf(weights, topOhmM, column, log === 0 ? ohmM : null));
    return { ohmM, slopes };
  };
  return { at, withSlopes };
}

/** Logarithms of a soil, as the model takes them. */
export function logsOf({ resistivityOhmM, thicknessM }: LayeredSoil): Float64Array {
  return Float64Array.from([...resistivityOhmM, ...thicknessM], Math.log);
}

function fillOhmM({ rows }: ApparentWeights, topOhmM: number, sent: Float64Array, ohmM: Float64Array): void {
  for (let i = 0; i < rows.length; i++) ohmM[i] = topOhmM * (1 + product(rows[i]!, sent));
}

/** `own`: the first resistivity also stands before everything else. */
function slopeOf({ rows }: ApparentWeights, topOhmM: number, sent: Float64Array, own: Float64Array | null) {
  const slope = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) slope[i] = topOhmM * product(rows[i]!, sent) + (own === null ? 0 : own[i]!);
  return slope;
}

function product(a: Float64Array, b: Float64Array): number {
  // two sums, so that one need not wait for the other
  let even = 0;
  let odd = 0;
  for (let k = 0; k + 1 < a.length; k += 2) {
    even += a[k]! * b[k]!;
    odd += a[k + 1]! * b[k + 1]!;
  }
  return a.length % 2 === 0 ? even + odd : even + odd + a[a.length - 1]! * b[a.length - 1]!;
}
