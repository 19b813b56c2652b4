import type { BondingGraph } from './graph-builder.ts';
import type { Tie } from './tie.ts';

/** Whether a tie is a bond: permanent metal, or the protective conductor of a fixed feeder. */
export function isBond({ kind }: Tie): boolean {
  return kind === 'metal' || kind === 'feeder';
}

export type EdgeChoice = { readonly edge: (key: string) => boolean };

/** Bonds that are known to be there. */
export function knownBonds(graph: BondingGraph): EdgeChoice {
  return chosen(graph, (tie) => tie.is === 'there' && isBond(tie));
}

/** Bonds that are there or may be. */
export function possibleBonds(graph: BondingGraph): EdgeChoice {
  return chosen(graph, isBond);
}

/** Ties that a question counts, read from the graph once. */
export function chosen(graph: BondingGraph, counts: (tie: Tie) => boolean): EdgeChoice {
  const keys = new Set<string>();
  graph.forEachEdge((key, tie) => {
    if (counts(tie)) keys.add(key);
  });
  return { edge: (key) => keys.has(key) };
}
