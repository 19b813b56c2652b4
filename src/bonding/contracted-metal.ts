import { MultiUndirectedGraph } from 'graphology';
import { isBond } from './bond-choice.ts';
import type { MetalGraph } from './build-graph.ts';
import type { BondingGraph } from './graph-builder.ts';
import type { Members } from './members.ts';
import type { SiteIndex } from './site-index.ts';

/** The bonds alone, with each member that is one piece of metal drawn into one node. */
export interface ContractedMetal {
  readonly graph: BondingGraph;
  /** Member → its nodes in this graph. */
  readonly members: Members;
  readonly memberOf: ReadonlyMap<string, string>;
  /** The node of this graph that a node of the whole graph was drawn into. */
  readonly inside: (node: string) => string;
  readonly index: SiteIndex;
}

/**
 * Bonds that are there or may be, under their own keys. A support that is one piece fails as one, so its points are one
 * node here; landings on a case stay apart.
 */
export function contractedMetal({ graph, index }: MetalGraph, members: Members): ContractedMetal {
  const bonds: BondingGraph = new MultiUndirectedGraph();
  const nodeFor = new Map<string, string>();
  for (const [id, nodes] of members) {
    const isOne = nodes.length > 1 && index.parts.get(id)?.section === 'supports';
    if (isOne) for (const node of nodes) nodeFor.set(node, id);
  }
  const inside = (node: string) => nodeFor.get(node) ?? node;
  graph.forEachNode((node, facts) => {
    if (!bonds.hasNode(inside(node))) bonds.addNode(inside(node), facts);
  });
  graph.forEachEdge((key, tie, a, b) => {
    if (isBond(tie) && inside(a) !== inside(b)) bonds.addUndirectedEdgeWithKey(key, inside(a), inside(b), tie);
  });
  const drawn = new Map([...members].map(([id, nodes]) => [id, [...new Set(nodes.map(inside))]] as const));
  const memberOf = new Map([...drawn].flatMap(([id, nodes]) => nodes.map((node) => [node, id] as const)));
  return { graph: bonds, members: drawn, memberOf, inside, index };
}
