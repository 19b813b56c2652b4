import { MultiUndirectedGraph } from 'graphology';

/** key, one end, other end, length in metres (null: unknown). */
export type Bond = readonly [key: string, a: string, b: string, lengthM: number | null];

/** A multigraph and the questions about it, in the form in which both sides read it. */
export interface Question {
  readonly nodes: readonly string[];
  readonly edges: readonly Bond[];
  /** Two different nodes to count ways between; null where the graph has but one node. */
  readonly pair: readonly [string, string] | null;
  readonly breakable: readonly string[];
  readonly targets: readonly string[];
  /** Nodes where a way may end, but that it may not pass. */
  readonly ends: readonly string[];
}

/** Numbers from 0 up to, without, 1; the same for the same seed (mulberry32). */
export function seededNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Up to 24 nodes, from no bonds to four per node; a third of the bonds double an earlier one or start and end at one
 * node.
 */
export function randomQuestion(next: () => number): Question {
  const nodes = Array.from({ length: 1 + Math.floor(next() * 24) }, (_, i) => `n${i}`);
  const pick = () => nodes[Math.floor(next() * nodes.length)]!;
  const some = (share: number) => nodes.filter(() => next() < share);
  const edges: Bond[] = [];
  const count = Math.floor(next() * 4 * nodes.length);
  for (let i = 0; i < count; i++) {
    const kind = next();
    const [a, b] = kind < 0.2 && i > 0 ? edges[Math.floor(next() * i)]!.slice(1, 3) : [pick(), pick()];
    // Quarter metres add up exactly in any order.
    const length = next() < 0.2 ? null : Math.floor(next() * 12) / 4;
    edges.push([`e${i}`, a as string, kind > 0.9 ? (a as string) : (b as string), length]);
  }
  const [a, b] = [pick(), pick()];
  return {
    nodes,
    edges,
    pair: a === b ? null : [a, b],
    breakable: some(0.5),
    targets: [pick(), ...some(0.1)],
    ends: some(0.3),
  };
}

export function graphOf({ nodes, edges }: Pick<Question, 'nodes' | 'edges'>): MultiUndirectedGraph {
  const graph = new MultiUndirectedGraph();
  for (const id of nodes) graph.addNode(id);
  for (const [key, a, b, length] of edges) {
    const lengthM = length === null ? null : { low: length, high: 2 * length };
    graph.addUndirectedEdgeWithKey(key, a, b, { lengthM });
  }
  return graph;
}
