import { factorCholesky, solveFactored } from '../math/dense.ts';
import { conductanceOf, inverseOf, membership } from './body-conductance.ts';
import { merged } from './merged-segments.ts';
import type { Segments } from './segments.ts';

/** How far figures lie above the limit of ever finer cutting, relative. */
export interface ErrorEstimate {
  readonly errorShare: Float64Array;
  /** The same for all bodies joined into one. */
  readonly togetherErrorShare: number;
  /** What halving alone shows of it: of bodies whose own figures are worked out at a finer cut. */
  readonly togetherHalvingShare: number;
  /** The part of `errorShare` that finer cutting takes off. */
  readonly cutShare: Float64Array;
}

/**
 * Estimate for each body's own figure, with the others in the soil. The same matrix with neighbouring segments taken
 * together two by two gives a coarser, higher figure, and what is still to come is at most three times what that halving
 * cost. A stretch of one segment cannot be halved, and one of two or three that mirror each other shows little when it is:
 * their share of the current may be out by what even leakage costs at most. Bodies of more than one stretch carry what happens
 * near bends and crossings besides.
 *
 * All four figures are ours, seen on the exact references of single rods and on bodies of many kinds in layers against
 * the same cut far finer.
 */
export function errorEstimate(
  matrix: Float64Array,
  segments: Segments,
  bodyCount: number,
  leakage: Float64Array,
): ErrorEstimate {
  const coarse = merged(matrix, segments);
  const conductance = conductanceOf(leakage, segments.body, bodyCount);
  const fineOhm = inverseOf(conductance, bodyCount);
  const factored = factorCholesky(coarse.matrix, coarse.body.length);
  if (fineOhm === null || !factored.ok) return unknownError(bodyCount);
  const { solution } = solveFactored(factored, membership(coarse.body, bodyCount), bodyCount);
  const coarseConductance = conductanceOf(solution, coarse.body, bodyCount);
  const coarseOhm = inverseOf(coarseConductance, bodyCount);
  if (coarseOhm === null) return unknownError(bodyCount);
  const hidden = hiddenLeakage(coarse.stretches, segments.body, leakage, bodyCount);
  const rise = (above: number, below: number): number => errorFactor * Math.max(0, above / below - 1);
  const cutShare = Float64Array.from({ length: bodyCount }, (_, b) => {
    const own = b * (bodyCount + 1);
    return rise(coarseOhm[own]!, fineOhm[own]!) + Math.min(evenShare, hidden[b]! / conductance[own]!);
  });
  const all = rise(total(conductance), total(coarseConductance));
  return {
    errorShare: cutShare.map((share, b) => share + besides(coarse.stretches, segments, b)),
    togetherErrorShare: all + Math.min(evenShare, total(hidden) / total(conductance)) + crossingShare,
    togetherHalvingShare: all,
    cutShare,
  };
}

const errorFactor = 3;
/** Even leakage along each arm of a star: 12 % in plain soil (eight arms), up to 17 % over soil that resists more. */
const evenShare = 0.2;
/** Even leakage along each half of a straight wire, an arm, a strip of a plate. */
const halvesShare = 0.04;
const crossingShare = 0.003;
const straightShare = 0.0015;

function unknownError(bodyCount: number): ErrorEstimate {
  const unknown = new Float64Array(bodyCount).fill(Number.POSITIVE_INFINITY);
  const none = Number.POSITIVE_INFINITY;
  return { errorShare: unknown, togetherErrorShare: none, togetherHalvingShare: none, cutShare: unknown };
}

/** What leaves each body where halving shows nothing, ampere per volt of its own, times how far that may be out. */
function hiddenLeakage(
  stretches: readonly (readonly number[])[],
  body: Int32Array,
  leakage: Float64Array,
  bodyCount: number,
): Float64Array {
  const sums = new Float64Array(bodyCount);
  for (const stretch of stretches) {
    if (stretch.length > 3) continue;
    const share = stretch.length === 1 ? evenShare : halvesShare;
    for (const i of stretch) {
      const own = body[i]!;
      sums[own] = sums[own]! + share * Math.abs(leakage[i * bodyCount + own]!);
    }
  }
  return sums;
}

/** A run that only goes on in another layer is no second one. */
function besides(stretches: readonly (readonly number[])[], { body, run }: Segments, own: number): number {
  const runs = stretches.filter(([first]) => body[first!] === own && run[first!] !== run[first! - 1]);
  return runs.length > 1 ? crossingShare : straightShare;
}

function total(figures: Float64Array): number {
  return figures.reduce((sum, each) => sum + each, 0);
}
