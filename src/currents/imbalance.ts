import { groundCluster } from './contraction.ts';
import { rootOf } from './islands.ts';
import type { Injection } from './network.ts';
import type { SolvedNetwork } from './solve-network.ts';

/** How far the currents are from balance. */
export interface Imbalance {
  /**
   * Largest sum of the currents at one node, relative to the current put in (the larger of what goes in and what is taken
   * out); each current is worked out from its own resistance and potential difference, so a poor solve shows here.
   */
  readonly residual: number;
  /** Node where it is; null where nothing was put in. Nodes that resistances of 0 join count as one, the first of them. */
  readonly worstNode: number | null;
}

interface Currents {
  readonly branchA: readonly (number | null)[];
  readonly earthA: readonly (number | null)[];
}

/** Balance of every node but those on an island that current was stranded on. Expects null for branches of 0 ohm. */
export function worstImbalance(
  solved: SolvedNetwork,
  injections: readonly Injection[],
  { branchA, earthA }: Currents,
  stranded: ReadonlySet<number>,
): Imbalance {
  const { network, contraction } = solved;
  const { clusterOf, clusterCount, firstNode } = contraction;
  const rest = new Float64Array(clusterCount);
  const isKnown = new Uint8Array(clusterCount).fill(1);
  const put = (node: number, current: number | null): void => {
    const cluster = clusterOf[node]!;
    if (cluster === groundCluster) return;
    if (current === null) isKnown[cluster] = 0;
    else rest[cluster] = rest[cluster]! + current;
  };
  for (const [at, { from, to, resistanceOhm }] of network.branches.entries()) {
    if (resistanceOhm === 0) continue;
    const current = branchA[at]!;
    put(from, current === null ? null : -current);
    put(to, current);
  }
  for (const [i, current] of earthA.entries()) put(network.earth.nodes[i]!, current === null ? null : -current);
  for (const { node, currentA } of injections) put(node, stranded.has(rootOf(solved, node)) ? null : currentA);
  return worstOf(rest, isKnown, firstNode, injectedA(injections));
}

function worstOf(rest: Float64Array, isKnown: Uint8Array, firstNode: readonly number[], injected: number): Imbalance {
  if (injected === 0) return { residual: 0, worstNode: null };
  let [residual, worstNode]: [number, number | null] = [0, null];
  for (let cluster = 0; cluster < rest.length; cluster++) {
    const share = Math.abs(rest[cluster]!) / injected;
    if (isKnown[cluster] === 0 || share < residual || (share === residual && worstNode !== null)) continue;
    [residual, worstNode] = [share, firstNode[cluster]!];
  }
  return { residual, worstNode };
}

function injectedA(injections: readonly Injection[]): number {
  const sum = (sign: number): number => injections.reduce((all, { currentA }) => all + Math.max(0, sign * currentA), 0);
  return Math.max(sum(1), sum(-1));
}
