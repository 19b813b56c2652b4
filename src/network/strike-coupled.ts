import { peakOf } from '../surge/peak-of.ts';
import { currentFigure, overTime } from '../surge/surge-figure.ts';
import { surgeModes } from '../surge/surge-modes.ts';
import type { Wave } from '../surge/wave.ts';
import type { StrikeNetwork } from './strike-network.ts';
import { type StrikeRun, type StrikeSite, strikeOf } from './strike-of.ts';

/** Coupling of wires whose way nobody knows, at the most. Ours: two wires of a bundle along their whole length have about that. */
export const mostCoupling = 0.6;

/**
 * The same stroke with the wires of which only the length is known coupled to each other by a factor, in the sense of their
 * currents: `M = k sqrt(L L')` of whole parts, shared over their spans by inductance, so that splitting a wire changes nothing
 * (the matrix stays positive definite for k below 1). null: fewer than two parts are without a place, or it cannot be solved.
 */
export function coupledStrike(site: StrikeSite, run: StrikeRun, wave: Wave, k = mostCoupling): StrikeRun | null {
  const unplaced = unplacedBranches(site.network);
  if (new Set(unplaced.map((i) => site.network.branches[i]!.part)).size < 2) return null;
  const network = coupled(site.network, unplaced, (branch) => Math.sign(branchPeak(run, branch)) || 1, k);
  const modes = surgeModes(network.surge);
  if (!modes.ok) return null;
  const again = strikeOf({ ...site, network, modes }, run.at, wave);
  return again.ok ? again : null;
}

/** Branches with inductance by length alone. */
function unplacedBranches({ branches, surge }: StrikeNetwork): readonly number[] {
  return branches.flatMap(({ way, lengthM, statedH }, i) => {
    const isOpen = way === null && statedH === null && lengthM > 0;
    return isOpen && surge.branches[i]!.inductanceH > 0 ? [i] : [];
  });
}

function branchPeak({ network, run }: StrikeRun, branch: number): number {
  const weights = new Float64Array(network.branches.length + network.points.length);
  weights[branch] = 1;
  return peakOf(run.wave.timesS, overTime(run, currentFigure(run, weights))).value;
}

function coupled(
  network: StrikeNetwork,
  unplaced: readonly number[],
  signOf: (branch: number) => number,
  k: number,
): StrikeNetwork {
  const { surge, branches } = network;
  const size = branches.length;
  const mutualH = surge.mutualH?.slice() ?? diagonal(surge.branches.map((b) => b.inductanceH));
  const ownOf = new Map<string, number>();
  for (const i of unplaced) {
    const { part } = branches[i]!;
    ownOf.set(part, (ownOf.get(part) ?? 0) + surge.branches[i]!.inductanceH);
  }
  // what a span has of its part's root: all of them squared over their inductances add up to one
  const roots = unplaced.map((i) => {
    const henry = surge.branches[i]!.inductanceH;
    return (signOf(i) * henry) / Math.sqrt(ownOf.get(branches[i]!.part)!);
  });
  unplaced.forEach((i, a) => {
    unplaced.forEach((j, b) => {
      if (branches[i]!.part === branches[j]!.part) return;
      mutualH[i * size + j] = mutualH[i * size + j]! + k * roots[a]! * roots[b]!;
    });
  });
  return { ...network, surge: { ...surge, mutualH } };
}

function diagonal(ownH: readonly number[]): Float64Array {
  const matrix = new Float64Array(ownH.length ** 2);
  ownH.forEach((henry, i) => {
    matrix[i * (ownH.length + 1)] = henry;
  });
  return matrix;
}
