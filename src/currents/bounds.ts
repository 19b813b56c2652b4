import { factorCholesky } from '../math/dense.ts';
import type { Interval } from '../math/interval.ts';
import type { RefusedEarth } from './earth-conductance.ts';
import { type Earth, mutualOhm, type Network, ownResistances } from './network.ts';
import { resistanceBetween, resistancesToEarth } from './resistance.ts';
import { type SolvedNetwork, solveNetwork } from './solve-network.ts';

/** A network of which each resistance is known within a range. */
export interface RangedNetwork {
  readonly nodeCount: number;
  readonly branches: readonly RangedBranch[];
  readonly earth: RangedEarth;
}

export interface RangedBranch {
  readonly from: number;
  readonly to: number;
  /** `high` Infinity: may not be there. */
  readonly resistanceOhm: Interval;
  /** The figure to go by where one has to be named, Infinity for "not there"; null: nobody can name one. */
  readonly nominalOhm: number | null;
}

/** Like Earth, three times. `high` less `low` must be positive semidefinite, else the bounds would bound nothing. */
export interface RangedEarth {
  readonly nodes: readonly number[];
  readonly lowOhm: Earth['resistanceOhm'];
  readonly highOhm: Earth['resistanceOhm'];
  readonly nominalOhm: Earth['resistanceOhm'] | null;
}

export interface RefusedRange {
  readonly ok: false;
  readonly reason: 'earth-range-not-ordered';
}

/** The network solved at both ends and at its nominal figures. */
export interface SolvedRange {
  readonly ok: true;
  readonly low: SolvedNetwork;
  readonly value: SolvedNetwork | null;
  readonly high: SolvedNetwork;
}

/** Infinity: no way. `value` is null where a nominal figure is missing anywhere in the network. */
export interface ResistanceBounds {
  readonly low: number;
  readonly value: number | null;
  readonly high: number;
}

/**
 * Solves a network at all its low and at all its high resistances. No resistance between two nodes, or from one to earth,
 * can fall when a resistance rises (Rayleigh's law of monotony), so that these two bound every network in between. It does
 * not hold for currents.
 *
 * Source: P. G. Doyle, J. L. Snell, Random Walks and Electric Networks (1984), section 1.4 (from memory).
 */
export function solveRange(network: RangedNetwork): SolvedRange | RefusedEarth | RefusedRange {
  if (!isOrdered(network.earth)) return { ok: false, reason: 'earth-range-not-ordered' };
  const low = solveNetwork(pick(network, network.earth.lowOhm, ({ resistanceOhm }) => resistanceOhm.low));
  if (!low.ok) return low;
  const high = solveNetwork(pick(network, network.earth.highOhm, ({ resistanceOhm }) => resistanceOhm.high));
  if (!high.ok) return high;
  const value = solveNominal(network);
  return value !== null && !value.ok ? value : { ok: true, low, value, high };
}

/** Bounds of the resistance of every node to remote earth. */
export function boundsToEarth({ low, value, high }: SolvedRange): readonly ResistanceBounds[] {
  const lows = resistancesToEarth(low);
  const highs = resistancesToEarth(high);
  const values = value === null ? null : resistancesToEarth(value);
  return lows.map((ohm, node) => bounds(ohm, values === null ? undefined : values[node]!, highs[node]!));
}

/** Bounds of the resistance between two nodes, through metal and soil. */
export function boundsBetween({ low, value, high }: SolvedRange, a: number, b: number): ResistanceBounds {
  const nominal = value === null ? undefined : resistanceBetween(value, a, b);
  return bounds(resistanceBetween(low, a, b), nominal, resistanceBetween(high, a, b));
}

function bounds(low: number | null, value: number | null | undefined, high: number | null): ResistanceBounds {
  return { low: low ?? Infinity, value: value === undefined ? null : (value ?? Infinity), high: high ?? Infinity };
}

function solveNominal(network: RangedNetwork): SolvedNetwork | RefusedEarth | null {
  return network.branches.some((branch) => branch.nominalOhm === null) ? null : solveLikely(network, Infinity);
}

/** The network at its nominal figures, branches that have none at `unnamedOhm`; null where an electrode has none. */
export function solveLikely(network: RangedNetwork, unnamedOhm: number): SolvedNetwork | RefusedEarth | null {
  const { nominalOhm } = network.earth;
  if (nominalOhm === null) return null;
  return solveNetwork(pick(network, nominalOhm, (branch) => branch.nominalOhm ?? unnamedOhm));
}

function pick(
  { nodeCount, branches, earth }: RangedNetwork,
  resistanceOhm: Earth['resistanceOhm'],
  ohmOf: (branch: RangedBranch) => number,
): Network {
  const chosen = branches.map((branch) => ({ from: branch.from, to: branch.to, resistanceOhm: ohmOf(branch) }));
  return { nodeCount, branches: chosen, earth: { nodes: earth.nodes, resistanceOhm } };
}

/** How far below zero the difference may reach, relative to its largest figure, and still count as rounding. */
const orderShare = 1e-12;

/** Whether high less low is positive semidefinite over the electrodes that are there at the high end. */
function isOrdered({ nodes, lowOhm, highOhm }: RangedEarth): boolean {
  const low: Earth = { nodes, resistanceOhm: lowOhm };
  const high: Earth = { nodes, resistanceOhm: highOhm };
  const lowOwn = ownResistances(low);
  const highOwn = ownResistances(high);
  if (lowOwn.some((ohm, i) => !(ohm <= highOwn[i]!))) return false;
  if ([lowOhm, highOhm].every((matrix) => matrix.every((row) => typeof row === 'number'))) return true;
  const there = highOwn.flatMap((ohm, i) => (ohm === Infinity ? [] : [i]));
  const size = there.length;
  const margin = orderShare * Math.max(...there.map((i) => highOwn[i]!), 0);
  const rise = new Float64Array(size * size);
  for (const [row, i] of there.entries()) {
    for (const [column, j] of there.entries()) {
      const mutual = (earth: Earth): number => mutualOhm(earth, i, j);
      rise[row * size + column] = i === j ? highOwn[i]! - lowOwn[i]! + margin : mutual(high) - mutual(low);
    }
  }
  return factorCholesky(rise, size).ok;
}
