import type { MultiUndirectedGraph } from 'graphology';
import { type Choice, type Csr, chosenNode, csr } from './csr.ts';
import { type FlowNetwork, flowNetwork, mostUnits, UNLIMITED } from './flow-network.ts';

export interface DisjointWaysOptions extends Choice {
  /** Nodes that may fail by themselves, such as a clamp; two separate ways share none of them. */
  readonly breakableNode: (id: string) => boolean;
  /** Counting stops here; left out: never. */
  readonly bound?: number;
}

export interface DisjointWays {
  /** Most ways of which no two share an edge or a breakable node. The ends do not count as shared. */
  readonly separate: number;
  /** Most ways of which no two share an edge or any node but the ends. */
  readonly strict: number;
}

/**
 * How many ways there are from a to b that do not share what could fail (Menger's theorem, by augmenting ways). Each
 * edge straight from a to b is a way of its own. 0 and 0 where there is none or an end is left out by the choice.
 * Throws RangeError for a === b and for an id that the graph has not.
 */
export function disjointWays(
  graph: MultiUndirectedGraph,
  a: string,
  b: string,
  options: DisjointWaysOptions,
): DisjointWays {
  return disjointWaysIn(graph, options)(a, b);
}

/** The same for many pairs: the graph is read once. The graph must not change between the questions. */
export function disjointWaysIn(
  graph: MultiUndirectedGraph,
  options: DisjointWaysOptions,
): (a: string, b: string) => DisjointWays {
  const metal = csr(graph, options);
  const ways = disjointWaysOf(metal, (n) => options.breakableNode(metal.ids[n]!));
  return (a, b) => {
    if (a === b) throw new RangeError(`ways from ${a} to itself cannot be counted`);
    const from = chosenNode(graph, metal, a);
    const to = chosenNode(graph, metal, b);
    return from === null || to === null ? { separate: 0, strict: 0 } : ways(from, to, options.bound);
  };
}

/** The same of rows that were read already, by numbers of two different nodes. */
export function disjointWaysOf(
  metal: Csr,
  isBreakable: (node: number) => boolean,
): (from: number, to: number, bound?: number) => DisjointWays {
  const separate = networkOf(metal, isBreakable);
  const strict = networkOf(metal, () => true);
  const degree = (n: number) => metal.rows[n + 1]! - metal.rows[n]!;
  return (from, to, bound = Number.POSITIVE_INFINITY) => {
    // No more ways than edges at either end; so often nobody need look in vain for one more.
    const most = Math.min(bound, degree(from), degree(to));
    const ways = mostUnits(separate, outOf(from), into(to), most);
    return { separate: ways, strict: mostUnits(strict, outOf(from), into(to), ways) };
  };
}

/**
 * Every node is split in two, joined by an arc that one way may take (a breakable node) or any number. Every edge may
 * be taken once in each direction; taken in both, the two cancel out. Ways start behind a's own arc and end before b's,
 * so the ends never count.
 */
function networkOf(metal: Csr, isBreakable: (node: number) => boolean): FlowNetwork {
  const arcs: number[] = [];
  for (let n = 0; n < metal.ids.length; n++) arcs.push(into(n), outOf(n), isBreakable(n) ? 1 : UNLIMITED);
  for (let e = 0; e < metal.keys.length; e++) {
    const a = metal.ends[2 * e]!;
    const b = metal.ends[2 * e + 1]!;
    arcs.push(outOf(a), into(b), 1, outOf(b), into(a), 1);
  }
  return flowNetwork(2 * metal.ids.length, Int32Array.from(arcs));
}

function into(n: number): number {
  return 2 * n;
}

function outOf(n: number): number {
  return 2 * n + 1;
}
