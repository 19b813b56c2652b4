/**
 * The bonding graph as plain arrays ("compressed sparse rows"): nodes and edges become numbers in the order in which
 * the graph holds them, and each node has its edges in one stretch of an array. The algorithms of this room walk on
 * that.
 */
import type { Multigraph, Numbered } from './multigraph.ts';

/** Which nodes and edges of a graph count. Left out: all. An edge counts only when both its ends do. */
export interface Choice<T extends object = object> {
  edge?(key: string, facts: T): boolean;
  node?(id: string): boolean;
}

/** Who is next to whom. */
export interface Rows {
  /** The row of node n is at `rows[n]` up to, without, `rows[n + 1]` of `neighbours` and `edges`. */
  readonly rows: Int32Array;
  readonly neighbours: Int32Array;
  readonly edges: Int32Array;
}

export interface Csr<T extends object = object> extends Rows {
  /** Node number → id. */
  readonly ids: readonly string[];
  /** Edge number → key. An edge from a node to itself has a number, but stands in no row. */
  readonly keys: readonly string[];
  /** Edge number → what the graph says of it. */
  readonly facts: readonly T[];
  readonly numberOf: ReadonlyMap<string, number>;
  /** Ends of edge e: `ends[2 * e]` and `ends[2 * e + 1]`. */
  readonly ends: Int32Array;
}

/**
 * Reads the graph once; linear time. Parallel edges stay apart. Shares lists with the graph, which must not change while
 * these rows are in use.
 */
export function csr<T extends object>(graph: Multigraph<object, T>, choice: Choice<T> = {}): Csr<T> {
  const chosen = chosenEdges(chosenNodes(graph.numbered(), choice), choice);
  const ends = Int32Array.from(chosen.ends);
  return { ...chosen, ends, ...rowsOf(chosen.ids.length, ends) };
}

/**
 * The number of a node that the graph must have; null where the choice leaves it out. Throws RangeError for an id the
 * graph has not.
 */
export function chosenNode(graph: Multigraph, rows: Csr, id: string): number | null {
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

/** Numbers the nodes that count anew; an edge that loses an end goes with it. */
function chosenNodes<T extends object>(all: Numbered<T>, choice: Choice<T>): Numbered<T> {
  if (choice.node === undefined) return all;
  const ids = all.ids.filter((id) => choice.node!(id));
  const numberOf = new Map(ids.map((id, n) => [id, n] as const));
  const places = all.ids.map((id) => numberOf.get(id) ?? -1);
  const ends = all.ends.map((n) => places[n]!);
  return keepEdges({ ...all, ids, numberOf, ends }, (e) => ends[2 * e] !== -1 && ends[2 * e + 1] !== -1);
}

function chosenEdges<T extends object>(all: Numbered<T>, choice: Choice<T>): Numbered<T> {
  if (choice.edge === undefined) return all;
  return keepEdges(all, (e) => choice.edge!(all.keys[e]!, all.facts[e]!));
}

function keepEdges<T>(all: Numbered<T>, isKept: (e: number) => boolean): Numbered<T> {
  const [keys, facts, ends]: [string[], T[], number[]] = [[], [], []];
  for (let e = 0; e < all.keys.length; e++) {
    if (!isKept(e)) continue;
    keys.push(all.keys[e]!);
    facts.push(all.facts[e]!);
    ends.push(all.ends[2 * e]!, all.ends[2 * e + 1]!);
  }
  return { ...all, keys, facts, ends };
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
