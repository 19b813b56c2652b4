import type { Elimination } from './conductance-graph.ts';
import { DoubleDouble } from './double-double.ts';

/** Double-double numbers, one per node. */
export interface ExtendedVector {
  readonly high: Float64Array;
  readonly low: Float64Array;
}

/**
 * Potentials for a current put into each node (A). In a piece that has no way to ground the potentials are against its
 * root, and are right only where the currents put into that piece add up to 0.
 */
export function solveElimination(elimination: Elimination, currents: ExtendedVector): ExtendedVector {
  const high = Float64Array.from(currents.high);
  const low = Float64Array.from(currents.low);
  passOn(elimination, high, low);
  goBack(elimination, high, low);
  return { high, low };
}

/** Each node hands its current to the neighbours that were still in place when it was taken out. */
function passOn(elimination: Elimination, high: Float64Array, low: Float64Array): void {
  const { nodeCount, order, start, neighbour, shareHigh, shareLow } = elimination;
  const sum = new DoubleDouble();
  for (let step = 0; step < nodeCount; step++) {
    const node = order[step]!;
    if (high[node] === 0) continue;
    for (let at = start[step]!; at < start[step + 1]!; at++) {
      const other = neighbour[at]!;
      sum.set(high[other]!, low[other]!).addProduct(shareHigh[at]!, shareLow[at]!, high[node]!, low[node]!);
      high[other] = sum.high;
      low[other] = sum.low;
    }
  }
}

function goBack(elimination: Elimination, high: Float64Array, low: Float64Array): void {
  const { nodeCount, order, start, neighbour, shareHigh, shareLow, pivotHigh, pivotLow } = elimination;
  const sum = new DoubleDouble();
  for (let step = nodeCount - 1; step >= 0; step--) {
    const node = order[step]!;
    const isFloatingRoot = pivotHigh[step] === 0;
    if (isFloatingRoot || high[node] === 0) sum.set(0);
    else sum.set(high[node]!, low[node]!).divide(pivotHigh[step]!, pivotLow[step]!);
    for (let at = start[step]!; at < start[step + 1]!; at++) {
      const other = neighbour[at]!;
      sum.addProduct(shareHigh[at]!, shareLow[at]!, high[other]!, low[other]!);
    }
    high[node] = sum.high;
    low[node] = sum.low;
  }
}
