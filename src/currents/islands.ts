import { groundCluster } from './contraction.ts';
import type { Injection } from './network.ts';
import type { SolvedNetwork } from './solve-network.ts';

/** Root of the island a node is on; groundCluster for a node that is at remote earth. */
export function rootOf({ contraction, elimination }: SolvedNetwork, node: number): number {
  const cluster = contraction.clusterOf[node]!;
  return cluster === groundCluster ? groundCluster : elimination.rootOf[cluster]!;
}

/** What is left of the currents into an island may be rounding of the caller's own sums: this share of them. */
const balanceShare = 1e-12;

/** Islands without earth that the injections leave current on, by root. */
export function strandedRoots(solved: SolvedNetwork, injections: readonly Injection[]): ReadonlySet<number> {
  const net = new Map<number, { sum: number; size: number }>();
  for (const { node, currentA } of injections) {
    const root = rootOf(solved, node);
    if (root === groundCluster || solved.elimination.floats[root] === 0) continue;
    const before = net.get(root) ?? { sum: 0, size: 0 };
    net.set(root, { sum: before.sum + currentA, size: before.size + Math.abs(currentA) });
  }
  return new Set([...net].filter(([, { sum, size }]) => Math.abs(sum) > balanceShare * size).map(([root]) => root));
}
