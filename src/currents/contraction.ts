import { type Network, ownResistances } from './network.ts';

/** Which nodes are one because resistances of 0 join them. */
export interface Contraction {
  /** Cluster of each node; `groundCluster` for those that are at remote earth. */
  readonly clusterOf: Int32Array;
  readonly clusterCount: number;
  /** Least node of each cluster. */
  readonly firstNode: readonly number[];
}

export const groundCluster = -1;

/** Makes one of all nodes that resistances of 0 join, electrodes of 0 ohm to remote earth among them. */
export function contract(network: Network): Contraction {
  const { nodeCount, branches, earth } = network;
  const ground = nodeCount;
  const above = Int32Array.from({ length: nodeCount + 1 }, (_, node) => node);
  for (const { from, to, resistanceOhm } of branches) if (resistanceOhm === 0) unite(above, from, to);
  for (const [i, own] of ownResistances(earth).entries()) if (own === 0) unite(above, earth.nodes[i]!, ground);
  const clusterOf = new Int32Array(nodeCount);
  const clusterOfTop = new Int32Array(nodeCount + 1).fill(groundCluster - 1);
  clusterOfTop[topOf(above, ground)] = groundCluster;
  const firstNode: number[] = [];
  for (let node = 0; node < nodeCount; node++) {
    const top = topOf(above, node);
    if (clusterOfTop[top]! < groundCluster) clusterOfTop[top] = firstNode.push(node) - 1;
    clusterOf[node] = clusterOfTop[top]!;
  }
  return { clusterOf, clusterCount: firstNode.length, firstNode };
}

function unite(above: Int32Array, a: number, b: number): void {
  above[topOf(above, a)] = topOf(above, b);
}

function topOf(above: Int32Array, node: number): number {
  let at = node;
  while (above[at] !== at) {
    above[at] = above[above[at]!]!;
    at = above[at]!;
  }
  return at;
}
