/** What hangs on one thing: cut edges, cut vertices, and what each of them takes along when it fails. */
import type { MultiUndirectedGraph } from 'graphology';
import { type Choice, type Csr, csr } from './csr.ts';
import { allNodes, depthFirst } from './depth-first.ts';

/** Sets in the order in which the graph holds its nodes and edges. */
export interface CutPoints {
  /** Keys of the edges whose loss leaves more pieces than before. */
  readonly edges: ReadonlySet<string>;
  /** Ids of the nodes whose loss leaves more pieces than before (their own not counted). */
  readonly nodes: ReadonlySet<string>;
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

function named(names: readonly string[], marks: Uint8Array): Set<string> {
  const set = new Set<string>();
  for (let i = 0; i < marks.length; i++) if (marks[i] === 1) set.add(names[i]!);
  return set;
}
