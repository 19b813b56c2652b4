import type { Csr } from './csr.ts';
import { numberHeap } from './number-heap.ts';

export interface CellQuestion {
  readonly net: Csr;
  /** Cell of each node that is given one, counted from 0; -1: to be found. */
  readonly given: Int32Array;
  /** How far from the start a cell is: cells of a later start take only what no earlier one reaches. */
  readonly startOf: (cell: number) => number;
  /** Cost of going along an edge, greater than zero; null: no way. */
  readonly costOf: (edge: number) => number | null;
}

export interface Cells {
  /** Cell of each node; -1 where no way leads to one. */
  readonly of: Int32Array;
  /** Edge by which a node hangs on its cell; -1 at a node that was given one, and where there is none. */
  readonly by: Int32Array;
  /** Place of each edge when all keys are in order: what decides between equals. */
  readonly rank: Int32Array;
}

/**
 * Every node goes to the cell that is nearest along the edges; of equals to the first cell, then by the first edge in the
 * order of keys, so that the answer does not hang on the order in which the graph was built. No way goes on through a
 * node that was given its cell. Dijkstra from all given nodes at once: time m log n.
 */
export function nearestCells({ net, given, startOf, costOf }: CellQuestion): Cells {
  const of = given.slice();
  const by = new Int32Array(of.length).fill(-1);
  const rank = ranksOf(net.keys);
  const cost = Float64Array.from(given, (cell) => (cell === -1 ? Number.POSITIVE_INFINITY : startOf(cell)));
  const heap = numberHeap(of.length, (a, b) => cost[a]! - cost[b]! < 0 || (cost[a] === cost[b] && of[a]! < of[b]!));
  for (let n = 0; n < of.length; n++) if (given[n] !== -1) heap.raise(n);
  const isBetter = (next: number, newCost: number, cell: number, edge: number) =>
    newCost - cost[next]! || cell - of[next]! || rank[edge]! - rank[by[next]!]!;
  for (let n = heap.takeFirst(); n !== -1; n = heap.takeFirst()) {
    for (let r = net.rows[n]!; r < net.rows[n + 1]!; r++) {
      const [next, edge] = [net.neighbours[r]!, net.edges[r]!];
      const step = given[next] === -1 ? costOf(edge) : null;
      if (step === null || isBetter(next, cost[n]! + step, of[n]!, edge) >= 0) continue;
      cost[next] = cost[n]! + step;
      of[next] = of[n]!;
      by[next] = edge;
      heap.raise(next);
    }
  }
  return { of, by, rank };
}

function ranksOf(keys: readonly string[]): Int32Array {
  const rank = new Int32Array(keys.length);
  const order = keys.map((_key, e) => e).sort((a, b) => (keys[a]! < keys[b]! ? -1 : 1));
  order.forEach((e, i) => {
    rank[e] = i;
  });
  return rank;
}

/** The edges from a node back to the node that was given its cell, nearest first, with the node that each leads to. */
export function wayBack(
  net: Csr,
  { by }: Cells,
  node: number,
): readonly { readonly edge: number; readonly to: number }[] {
  const way: { readonly edge: number; readonly to: number }[] = [];
  for (let at = node; by[at] !== -1; ) {
    const edge = by[at]!;
    at = net.ends[2 * edge] === at ? net.ends[2 * edge + 1]! : net.ends[2 * edge]!;
    way.push({ edge, to: at });
  }
  return way;
}
