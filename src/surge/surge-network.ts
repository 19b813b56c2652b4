import type { Wave } from './wave.ts';

/**
 * A network of resistances and coupled inductances in the air, with electrodes to one remote earth: nodes 0 to nodeCount - 1.
 */
export interface SurgeNetwork {
  readonly nodeCount: number;
  readonly branches: readonly SurgeBranch[];
  /** Inductances between all branches, row by row, each branch's own on the diagonal; null: only their own. */
  readonly mutualH: Float64Array | null;
  readonly earth: SurgeEarth;
}

/** Positive current runs from `from` to `to`. Both figures may be 0, not both at once. */
export interface SurgeBranch {
  readonly from: number;
  readonly to: number;
  readonly resistanceOhm: number;
  readonly inductanceH: number;
}

/** Electrodes: own resistances, or the symmetric matrix R of V = R I where they feel each other through the soil. */
export interface SurgeEarth {
  readonly nodes: readonly number[];
  readonly resistanceOhm: readonly number[] | readonly (readonly number[])[];
}

/** A current that comes down into a node and leaves by the electrodes. */
export interface SurgeSource {
  readonly node: number;
  readonly wave: Wave;
  /** Mutual inductance of the source's own path (a lightning channel) with each branch, henry; null: none. */
  readonly channelH: Float64Array | null;
}

/** Why a network cannot be solved, and where: nodes without a way to earth, or the branches at fault. */
export interface RefusedSurge {
  readonly ok: false;
  readonly reason: 'no way to earth' | 'earth not positive definite' | 'inductance not positive definite';
  readonly nodes: readonly number[];
  readonly branches: readonly number[];
}

/** RangeError for what no site can lead to: a node that is not there, a negative or endless figure, a matrix of another size. */
export function checkSurgeNetwork({ nodeCount, branches, mutualH, earth }: SurgeNetwork): void {
  const isNode = (node: number) => Number.isInteger(node) && node >= 0 && node < nodeCount;
  for (const { from, to, resistanceOhm, inductanceH } of branches) {
    if (!isNode(from) || !isNode(to)) throw new RangeError(`no node ${isNode(from) ? to : from}`);
    if (!isFigure(resistanceOhm)) throw new RangeError(`${resistanceOhm} is no resistance in ohm`);
    if (!isFigure(inductanceH)) throw new RangeError(`${inductanceH} is no inductance in henry`);
    if (resistanceOhm === 0 && inductanceH === 0)
      throw new RangeError('a branch of nothing: its two ends are one node');
  }
  const wrong = earth.nodes.find((node) => !isNode(node));
  if (wrong !== undefined) throw new RangeError(`no node ${wrong}`);
  if (earth.resistanceOhm.length !== earth.nodes.length) throw new RangeError('one row for each electrode');
  if (mutualH !== null) checkInductances(branches, mutualH);
}

/** Largest difference that counts as rounding, relative to the branches' own. */
const roundingShare = 1e-9;

function checkInductances(branches: readonly SurgeBranch[], mutualH: Float64Array): void {
  const size = branches.length;
  if (mutualH.length !== size ** 2) throw new RangeError('one row of inductances for each branch');
  if (mutualH.some((henry) => !Number.isFinite(henry))) throw new RangeError('an inductance is no number');
  branches.forEach(({ inductanceH }, i) => {
    const ownH = mutualH[i * (size + 1)]!;
    if (!(Math.abs(ownH - inductanceH) <= roundingShare * inductanceH))
      throw new RangeError(`branch ${i} has ${inductanceH} H of its own, the matrix has ${ownH}`);
    for (let j = 0; j < i; j++) {
      const most = roundingShare * Math.sqrt(inductanceH * branches[j]!.inductanceH);
      if (!(Math.abs(mutualH[i * size + j]! - mutualH[j * size + i]!) <= most))
        throw new RangeError(`inductances are lopsided at ${i}, ${j}`);
    }
  });
}

function isFigure(value: number): boolean {
  return Number.isFinite(value) && value >= 0;
}
