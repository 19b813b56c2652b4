import { type Flow, flow } from '../../src/currents/flow.ts';
import type { Network } from '../../src/currents/network.ts';
import { type SolvedNetwork, solveNetwork } from '../../src/currents/solve-network.ts';

/** Branches as [from, to, ohm] and electrodes as [node, ohm], uncoupled. */
export function network(
  nodeCount: number,
  branches: readonly (readonly [number, number, number])[],
  electrodes: readonly (readonly [number, number])[],
): Network {
  return {
    nodeCount,
    branches: branches.map(([from, to, resistanceOhm]) => ({ from, to, resistanceOhm })),
    earth: { nodes: electrodes.map(([node]) => node), resistanceOhm: electrodes.map(([, ohm]) => ohm) },
  };
}

export function solve(of: Network): SolvedNetwork {
  const solved = solveNetwork(of);
  if (!solved.ok) throw new Error(solved.reason);
  return solved;
}

/** One ampere into a node. */
export function oneAmpere(solved: SolvedNetwork, node: number): Flow {
  return flow(solved, [{ node, currentA: 1 }]);
}
