/**
 * Nodes joined by conductances, each of which may also leak to a common ground. Every conductance is a double-double
 * (high and low part). A conductance may be negative (the off-diagonal of a coupled matrix) as long as the whole is
 * positive (semi)definite; with none negative no step below ever subtracts.
 */
export interface ConductanceGraph {
  readonly nodeCount: number;
  readonly edges: readonly ConductanceEdge[];
  readonly toGround: readonly ExtendedNumber[];
}

export interface ExtendedNumber {
  readonly high: number;
  readonly low: number;
}

/** `a` and `b` differ; several edges between the same two nodes add up. */
export interface ConductanceEdge {
  readonly a: number;
  readonly b: number;
  readonly conductance: ExtendedNumber;
}

/**
 * The graph after every node was taken out in turn (star-mesh). Step s took out `order[s]`; its neighbours still in place
 * then stand at `start[s]` up to `start[s + 1]`.
 */
export interface Elimination {
  readonly nodeCount: number;
  readonly order: Int32Array;
  readonly stepOf: Int32Array;
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
  /** Share of the node's current that goes to each of those neighbours. */
  readonly shareHigh: Float64Array;
  readonly shareLow: Float64Array;
  /** Sum of the node's conductances when it was taken out; 0 for the last node of a piece without ground. */
  readonly pivotHigh: Float64Array;
  readonly pivotLow: Float64Array;
  /** Node of each piece that was taken out last: the same for all nodes of a piece. */
  readonly rootOf: Int32Array;
  /** 1 for a node whose piece has no way to ground; its root is held at 0 in every solve. */
  readonly floats: Uint8Array;
}
