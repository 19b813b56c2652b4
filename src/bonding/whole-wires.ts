import { MultiUndirectedGraph } from 'graphology';
import type { ContractedMetal } from './contracted-metal.ts';
import type { BondingGraph } from './graph-builder.ts';
import type { SiteIndex } from './site-index.ts';
import type { NodeFacts, Tie } from './tie.ts';

/** The bonds with each wire drawn into one node, so that what fails as one is one. */
export interface WholeWires {
  readonly graph: BondingGraph;
  /** The node of this graph that a node of the contracted metal was drawn into. */
  readonly inside: (node: string) => string;
  /** Whether a node fails by itself and takes along all that goes through it: a wire or a joint. */
  readonly isBreakable: (node: string) => boolean;
}

/**
 * A conductor, or the protective conductor of a feeder, is one thing however many spans clamps and splices make of it: its spans,
 * the points at which it passes clamps and its own splices become one node, with an edge to each thing that it meets. Two wires that
 * share a splice become one, since losing it loses both. Only ties that are known to be there.
 */
export function wholeWires(metal: ContractedMetal): WholeWires {
  const { index } = metal;
  const drawn = drawnInto(metal.graph, index);
  const graph: BondingGraph = new MultiUndirectedGraph<NodeFacts, Tie>();
  const inside = (node: string) => drawn.get(node) ?? node;
  metal.graph.forEachNode((node, facts) => {
    if (!graph.hasNode(inside(node))) graph.addNode(inside(node), facts);
  });
  const tie = (key: string, facts: Tie, a: string, b: string) => {
    if (a !== b && !graph.hasEdge(key)) graph.addUndirectedEdgeWithKey(key, a, b, facts);
  };
  metal.graph.forEachEdge((key, facts, a, b) => {
    if (facts.is !== 'there') return;
    const wire = wireOf(index, facts);
    if (wire === null) return tie(key, facts, inside(a), inside(b));
    const node = inside(wire);
    graph.mergeNode(node, { kind: 'wire', part: facts.part, heightM: null, noticed: facts.noticed });
    for (const end of [a, b]) tie(`${node}|${inside(end)}`, facts, node, inside(end));
  });
  const isBreakable = (node: string) => node.startsWith(prefix) || graph.getNodeAttribute(node, 'kind') === 'joint';
  return { graph, inside, isBreakable };
}

const prefix = 'wire ';

/** The wire that a tie is a piece of, as a node; null for any other tie. */
function wireOf({ parts }: SiteIndex, { part, kind }: Tie): string | null {
  const isWire = kind === 'feeder' || parts.get(part)?.section === 'conductors';
  return isWire ? `${prefix}${part}` : null;
}

/** Which wire each point in a wire and each splice is drawn into; where wires share a splice, the first of them. */
function drawnInto(graph: BondingGraph, index: SiteIndex): ReadonlyMap<string, string> {
  const into = new Map<string, string>();
  graph.forEachNode((node, { kind, part }) => {
    const isPoint = kind === 'wire' && index.parts.get(part)?.section === 'conductors';
    if (isPoint || kind === 'protective') into.set(node, `${prefix}${part}`);
  });
  const first = (wire: string): string => {
    let at = wire;
    for (let next = into.get(at); next !== undefined; next = into.get(at)) at = next;
    return at;
  };
  graph.forEachEdge((_key, tie, a, b) => {
    const splice = spliceOf(graph, tie, a, b);
    if (splice === null) return;
    const [held, wire] = [first(splice.joint), first(splice.point)];
    if (held !== wire) into.set(held, wire);
  });
  return new Map([...into.keys()].map((node) => [node, first(node)] as const));
}

/** The joint of a splice with the point at which the wire goes on from it. */
function spliceOf(graph: BondingGraph, { part, body }: Tie, a: string, b: string) {
  const kindOf = (node: string) => graph.getNodeAttribute(node, 'kind');
  if (body !== 'contact' || (a !== part && b !== part)) return null;
  const [joint, point] = a === part ? [a, b] : [b, a];
  return kindOf(joint) === 'joint' && kindOf(point) === 'wire' ? { joint, point } : null;
}
