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

/** A current that comes down into a node and leaves by the electrodes, or flows by without entering. */
export interface SurgeSource {
  /** null: none of it enters; it only induces, by `channelH`. */
  readonly node: number | null;
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
