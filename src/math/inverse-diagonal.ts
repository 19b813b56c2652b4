import type { Elimination } from './conductance-graph.ts';
import { DoubleDouble } from './double-double.ts';
import type { ExtendedVector } from './solve-elimination.ts';

/**
 * Resistance from every node to ground at once (in a piece without ground: to its root), by going back through the
 * elimination and working out only those entries of the inverse that stand where the eliminated graph has an edge. Nothing
 * is subtracted unless a conductance is negative. On a graph that is nearly a tree the work grows with the nodes.
 *
 * Source: K. Takahashi, J. Fagan, M.-S. Chin, "Formation of a sparse bus impedance matrix", Proc. 8th PICA Conf. (1973)
 * 63-69 (from memory).
 */
export function inverseDiagonal(elimination: Elimination): ExtendedVector {
  const { nodeCount, start, neighbour } = elimination;
  const inverse: Inverse = {
    diagonal: { high: new Float64Array(nodeCount), low: new Float64Array(nodeCount) },
    high: new Float64Array(neighbour.length),
    low: new Float64Array(neighbour.length),
    slotOf: new Int32Array(nodeCount).fill(-1),
  };
  for (let step = nodeCount - 1; step >= 0; step--) {
    for (let at = start[step]!; at < start[step + 1]!; at++) addWaysThrough(elimination, inverse, step, at);
    closeDiagonal(elimination, inverse, step);
  }
  return inverse.diagonal;
}

interface Inverse {
  readonly diagonal: ExtendedVector;
  /** Entry between the node of a step and each of its later neighbours. */
  readonly high: Float64Array;
  readonly low: Float64Array;
  readonly slotOf: Int32Array;
}

/** Shared by all steps: holds nothing between two calls. */
const sum = new DoubleDouble();

/** What the neighbour at `at` adds to the entries between the step's node and all its neighbours. */
function addWaysThrough(elimination: Elimination, inverse: Inverse, step: number, at: number): void {
  const { start, stepOf, neighbour, shareHigh, shareLow } = elimination;
  const through = neighbour[at]!;
  const { diagonal, slotOf, high, low } = inverse;
  addTo(inverse, at, shareHigh[at]!, shareLow[at]!, diagonal.high[through]!, diagonal.low[through]!);
  if (start[step + 1]! - start[step]! === 1) return;
  const own = stepOf[through]!;
  for (let slot = start[own]!; slot < start[own + 1]!; slot++) slotOf[neighbour[slot]!] = slot;
  for (let other = start[step]!; other < start[step + 1]!; other++) {
    if (stepOf[neighbour[other]!]! <= own) continue;
    const slot = slotOf[neighbour[other]!]!;
    addTo(inverse, other, shareHigh[at]!, shareLow[at]!, high[slot]!, low[slot]!);
    addTo(inverse, at, shareHigh[other]!, shareLow[other]!, high[slot]!, low[slot]!);
  }
  for (let slot = start[own]!; slot < start[own + 1]!; slot++) slotOf[neighbour[slot]!] = -1;
}

function addTo(inverse: Inverse, at: number, shareHigh: number, shareLow: number, high: number, low: number): void {
  sum.set(inverse.high[at]!, inverse.low[at]!).addProduct(shareHigh, shareLow, high, low);
  inverse.high[at] = sum.high;
  inverse.low[at] = sum.low;
}

function closeDiagonal(elimination: Elimination, { diagonal, high, low }: Inverse, step: number): void {
  const { order, start, shareHigh, shareLow, pivotHigh, pivotLow } = elimination;
  sum.set(0);
  if (pivotHigh[step] !== 0) sum.set(1).divide(pivotHigh[step]!, pivotLow[step]!);
  for (let at = start[step]!; at < start[step + 1]!; at++) {
    sum.addProduct(shareHigh[at]!, shareLow[at]!, high[at]!, low[at]!);
  }
  const node = order[step]!;
  diagonal.high[node] = sum.high;
  diagonal.low[node] = sum.low;
}
