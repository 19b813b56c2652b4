import { isBond } from './bond-choice.ts';
import type { Members } from './members.ts';
import { type MetalNet, netBuilder } from './metal-net.ts';
import type { SiteIndex } from './site-index.ts';

/** The bonds alone, with each member that is one piece of metal drawn into one node. */
export interface ContractedMetal {
  readonly net: MetalNet;
  /** Member → its nodes in this net. */
  readonly members: Members;
  readonly memberOf: ReadonlyMap<string, string>;
  /** The node of this net that a node of the whole graph was drawn into. */
  readonly inside: (node: string) => string;
  readonly index: SiteIndex;
}

/**
 * Bonds that are there or may be, under their own keys. A support that is one piece fails as one, so its points are one
 * node here; landings on a case stay apart.
 */
export function contractedMetal(index: SiteIndex, whole: MetalNet, members: Members): ContractedMetal {
  const nodeFor = new Map<string, string>();
  for (const [id, nodes] of members) {
    const isOne = nodes.length > 1 && index.parts.get(id)?.section === 'supports';
    if (isOne) for (const node of nodes) nodeFor.set(node, id);
  }
  const inside = (node: string) => nodeFor.get(node) ?? node;
  const bonds = netBuilder();
  const place = whole.ids.map((node, n) => bonds.addNode(inside(node), whole.nodes[n]!));
  whole.ties.forEach((tie, e) => {
    if (isBond(tie)) bonds.addTie(whole.keys[e]!, place[whole.ends[2 * e]!]!, place[whole.ends[2 * e + 1]!]!, tie);
  });
  const drawn = new Map([...members].map(([id, nodes]) => [id, [...new Set(nodes.map(inside))]] as const));
  const memberOf = new Map([...drawn].flatMap(([id, nodes]) => nodes.map((node) => [node, id] as const)));
  return { net: bonds.net(), members: drawn, memberOf, inside, index };
}
