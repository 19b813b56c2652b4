/**
 * The bonding graph as plain arrays ("compressed sparse rows"): nodes and edges become numbers in the order in which
 * the graph holds them, and each node has its edges in one stretch of an array. The algorithms of this room walk on
 * that.
 */
import type { MultiUndirectedGraph } from 'graphology';

/** Which nodes and edges of a graph count. Left out: all. An edge counts only when both its ends do. */
export interface Choice {
  readonly edge?: (key: string) => boolean;
  readonly node?: (id: string) => boolean;
}

/** Who is next to whom. */
export interface Rows {
  /** The row of node n is at `rows[n]` up to, without, `rows[n + 1]` of `neighbours` and `edges`. */
  readonly rows: Int32Array;
  readonly neighbours: Int32Array;
  readonly edges: Int32Array;
}

export interface Csr extends Rows {
  /** Node number → id. */
  readonly ids: readonly string[];
  /** Edge number → key. An edge from a node to itself has a number, but stands in no row. */
  readonly keys: readonly string[];
  readonly numberOf: ReadonlyMap<string, number>;
  /** Ends of edge e: `ends[2 * e]` and `ends[2 * e + 1]`. */
  readonly ends: Int32Array;
}

/** Reads the graph once; linear time. Parallel edges stay apart. */
export function csr(graph: MultiUndirectedGraph, choice: Choice = {}): Csr {
  const { ids, numberOf } = numberNodes(graph, choice);
  const { keys, ends } = numberEdges(graph, choice, numberOf);
  return { ids, keys, numberOf, ends, ...rowsOf(ids.length, ends) };
}

/**
 * The number of a node that the graph must have; null where the choice leaves it out. Throws RangeError for an id the
 * graph has not.
 */
export function chosenNode(graph: MultiUndirectedGraph, rows: Csr, id: string): number | null {
  const n = rows.numberOf.get(id);
  if (n !== undefined) return n;
  if (!graph.hasNode(id)) throw new RangeError(`the graph has no node ${id}`);
  return null;
}

/** The rows of the same graph with one more node, which has the last number and an edge to each of `to`. */
export function rowsWithNode({ ids, ends }: Csr, to: readonly number[]): Rows {
  const longer = new Int32Array(ends.length + 2 * to.length);
  longer.set(ends);
  to.forEach((n, i) => {
    longer[ends.length + 2 * i] = ids.length;
    longer[ends.length + 2 * i + 1] = n;
  });
  return rowsOf(ids.length + 1, longer);
}

function numberNodes(graph: MultiUndirectedGraph, { node }: Choice): { ids: string[]; numberOf: Map<string, number> } {
  const ids = node === undefined ? graph.nodes() : graph.filterNodes((id) => node(id));
  const numberOf = new Map<string, number>();
  for (let n = 0; n < ids.length; n++) numberOf.set(ids[n]!, n);
  return { ids, numberOf };
}

/**
 * Finding the numbers of the ends is most of the time that reading a graph takes; so keys are listed apart where all
 * edges count.
 */
function numberEdges(
  graph: MultiUndirectedGraph,
  { edge, node }: Choice,
  numberOf: ReadonlyMap<string, number>,
): { keys: string[]; ends: Int32Array } {
  const ends = new Int32Array(2 * graph.size);
  let filled = 0;
  const addEnds = (_key: string, _tie: unknown, a: string, b: string): void => {
    ends[filled++] = numberOf.get(a)!;
    ends[filled++] = numberOf.get(b)!;
  };
  if (edge === undefined && node === undefined) {
    graph.forEachEdge(addEnds);
    return { keys: graph.edges(), ends };
  }
  const keys = graph.filterEdges((key, tie, a, b) => {
    const counts = (edge === undefined || edge(key)) && numberOf.has(a) && numberOf.has(b);
    if (counts) addEnds(key, tie, a, b);
    return counts;
  });
  return { keys, ends: ends.subarray(0, filled) };
}

/**
 * The rows of so many nodes and the edges with these ends: counts each row, then fills it. Edges from a node to
 * itself are left out, since they lead nowhere.
 */
export function rowsOf(nodeCount: number, ends: Int32Array): Rows {
  const rows = new Int32Array(nodeCount + 1);
  for (let i = 0; i < ends.length; i += 2) {
    if (ends[i] === ends[i + 1]) continue;
    rows[ends[i]! + 1]!++;
    rows[ends[i + 1]! + 1]!++;
  }
  for (let n = 0; n < nodeCount; n++) rows[n + 1]! += rows[n]!;
  const free = rows.slice(0, nodeCount);
  const neighbours = new Int32Array(rows[nodeCount]!);
  const edges = new Int32Array(rows[nodeCount]!);
  for (let i = 0; i < ends.length; i += 2) {
    const a = ends[i]!;
    const b = ends[i + 1]!;
    if (a === b) continue;
    neighbours[free[a]!] = b;
    edges[free[a]!++] = i >> 1;
    neighbours[free[b]!] = a;
    edges[free[b]!++] = i >> 1;
  }
  return { rows, neighbours, edges };
}
