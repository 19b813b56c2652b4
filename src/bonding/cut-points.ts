/** What hangs on one thing: cut edges, cut vertices, and what each of them takes along when it fails. */
import type { MultiUndirectedGraph } from 'graphology';
import { type Choice, type Csr, chosenNode, csr, rowsWithNode } from './csr.ts';
import { allNodes, depthFirst, type Walk } from './depth-first.ts';

/** Each listed once, in the order in which the graph holds its nodes and edges. */
export interface CutPoints {
  /** Keys of the edges whose loss leaves more pieces than before. */
  readonly edges: readonly string[];
  /** Ids of the nodes whose loss leaves more pieces than before (their own not counted). */
  readonly nodes: readonly string[];
}

/** Linear time. Of parallel edges none is a cut edge; an edge from a node to itself never is. */
export function cutPoints(graph: MultiUndirectedGraph, choice: Choice = {}): CutPoints {
  const metal = csr(graph, choice);
  const { cutEdge, cutNode } = markCuts(metal);
  return { edges: named(metal.keys, cutEdge), nodes: named(metal.ids, cutNode) };
}

/** 1 for each edge and node whose loss parts something. */
function markCuts(metal: Csr): { cutEdge: Uint8Array; cutNode: Uint8Array } {
  const { place, low, parent, by, order } = depthFirst(metal, allNodes(metal));
  const cutEdge = new Uint8Array(metal.keys.length);
  const cutNode = new Uint8Array(metal.ids.length);
  const hasChild = new Uint8Array(metal.ids.length);
  for (const n of order) {
    const p = parent[n]!;
    if (p === -1 || low[n]! < place[p]!) continue;
    if (low[n]! > place[p]!) cutEdge[by[n]!] = 1;
    // A start holds two pieces together only when the walk had to leave it twice.
    if (parent[p] !== -1 || hasChild[p] === 1) cutNode[p] = 1;
    hasChild[p] = 1;
  }
  return { cutEdge, cutNode };
}

function named(names: readonly string[], marks: Uint8Array): string[] {
  const marked: string[] = [];
  for (let i = 0; i < marks.length; i++) if (marks[i] === 1) marked.push(names[i]!);
  return marked;
}

/** What the failure of one node or edge takes away from every root. */
export interface Loss {
  /** Id of the node or key of the edge. */
  readonly at: string;
  readonly of: 'node' | 'edge';
  /** How many nodes lose every root; the failing node is not counted. */
  readonly count: number;
  /** Their ids, sorted. Costs as much as the list is long. */
  readonly lost: () => string[];
  /** Shows the number of each of them. */
  readonly forEachLost: (see: (node: number) => void) => void;
}

/**
 * Each single node or edge whose failure leaves at least one other node without a way to any root, sorted by id, nodes
 * before edges. A root that fails is no root any more: the only root takes along all that hung on it. Nodes that reach
 * no root to begin with lose nothing. Throws RangeError for a root the graph has not; one that the choice leaves out
 * does not count.
 *
 * The roots are joined by a node that cannot fail, from which the graph is walked once (linear time). What hangs below
 * a cut is one stretch of that walk, so nothing is searched again for each failure.
 */
export function lossesFrom(graph: MultiUndirectedGraph, roots: readonly string[], choice: Choice = {}): Loss[] {
  const metal = csr(graph, choice);
  const starts = [...new Set(roots)].map((id) => chosenNode(graph, metal, id)).filter((n) => n !== null);
  return lossesIn(metal, starts);
}

/** The same of rows that were read already, by numbers of the roots, each once. */
export function lossesIn(metal: Csr, starts: readonly number[]): Loss[] {
  const walk = depthFirst(rowsWithNode(metal, starts), [metal.ids.length]);
  return [...nodeLosses(metal, walk), ...edgeLosses(metal, walk)];
}

function nodeLosses(metal: Csr, { order, place, after, low, parent }: Walk): Loss[] {
  const stretches = new Map<number, [from: number, to: number][]>();
  for (const n of order) {
    const p = parent[n]!;
    // The node that joins the roots has the last number, and cannot fail.
    if (p === -1 || p === metal.ids.length || low[n]! < place[p]!) continue;
    const below = stretches.get(p);
    const stretch: [number, number] = [place[n]!, after[n]!];
    if (below === undefined) stretches.set(p, [stretch]);
    else below.push(stretch);
  }
  return sorted([...stretches].map(([p, below]) => loss(metal, order, metal.ids[p]!, 'node', below)));
}

function edgeLosses(metal: Csr, { order, place, after, low, parent, by }: Walk): Loss[] {
  const losses: Loss[] = [];
  for (const n of order) {
    const p = parent[n]!;
    if (p === -1 || p === metal.ids.length || low[n]! <= place[p]!) continue;
    losses.push(loss(metal, order, metal.keys[by[n]!]!, 'edge', [[place[n]!, after[n]!]]));
  }
  return sorted(losses);
}

function loss(
  metal: Csr,
  order: Int32Array,
  at: string,
  of: Loss['of'],
  stretches: readonly (readonly [from: number, to: number])[],
): Loss {
  return {
    at,
    of,
    count: stretches.reduce((all, [from, to]) => all + to - from, 0),
    lost: () => stretches.flatMap(([from, to]) => Array.from(order.subarray(from, to), (n) => metal.ids[n]!)).sort(),
    forEachLost: (see) => {
      for (const [from, to] of stretches) for (let place = from; place < to; place++) see(order[place]!);
    },
  };
}

function sorted(losses: Loss[]): Loss[] {
  return losses.sort((a, b) => (a.at < b.at ? -1 : 1));
}
