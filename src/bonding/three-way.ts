import type { MultiUndirectedGraph } from 'graphology';
import { type Choice, type Csr, chosenNode, csr, rowsOf } from './csr.ts';
import { depthFirst, type Walk } from './depth-first.ts';

export interface ThreeWayOptions extends Choice {
  /** Whether the edge is known to be there; the others may be. Left out: the edge's `is` is 'there'. */
  readonly isThere?: (key: string) => boolean;
}

export interface ThreeWay {
  /**
   * Whether the node hangs together with a target: whatever the unknown edges are, with none of them, or it
   * depends.
   */
  readonly is: 'yes' | 'no' | 'unknown';
  /** The unknown edges that decide, sorted: with some setting of the others, this one alone turns the answer. */
  readonly decidedBy: readonly string[];
}

/**
 * Whether nodes hang together with any target when some edges are unknown. The graph is read once; ask the answer for
 * one node at a time (it costs what it lists). A target itself is 'yes'; without targets all are 'no'. Throws
 * RangeError for ids that the graph has not.
 *
 * What hangs together for sure is drawn into one node, all targets into node 0; unknown edges remain. An edge decides
 * for a node when some simple way from it to node 0 takes the edge: with only that way there, the edge alone turns the
 * answer. Those are the edges of the blocks (pieces that no single node parts) on the way from the node to node 0, and
 * one depth-first walk from node 0 finds all blocks (R. E. Tarjan, SIAM J. Comput. 1 (1972) 146-160).
 */
export function threeWay(
  graph: MultiUndirectedGraph,
  targets: readonly string[],
  options: ThreeWayOptions = {},
): (node: string) => ThreeWay {
  const metal = csr(graph, options);
  const isThere = options.isThere ?? ((key) => graph.getEdgeAttribute(key, 'is') === 'there');
  const there = Uint8Array.from(metal.keys, (key) => (isThere(key) ? 1 : 0));
  const ends = targets.map((id) => chosenNode(graph, metal, id)).filter((n) => n !== null);
  const { groupOf, count } = drawTogether(metal, there, ends);
  const between = metal.ends.map((n) => groupOf[n]!);
  const walk = depthFirst(rowsOf(count, between), [0]);
  const blocks = blocksOf(walk);
  const unknownIn = edgesByBlock(metal, walk, blocks, between);
  return (node) => {
    const n = chosenNode(graph, metal, node);
    if (n === null || walk.place[groupOf[n]!] === -1) return { is: 'no', decidedBy: [] };
    if (groupOf[n] === 0) return { is: 'yes', decidedBy: [] };
    return { is: 'unknown', decidedBy: decidingFor(groupOf[n]!, walk, blocks, unknownIn) };
  };
}

/** Numbers what hangs together by edges that are there; all targets get 0, even if there is none. */
function drawTogether(
  metal: Csr,
  there: Uint8Array,
  targets: readonly number[],
): { groupOf: Int32Array; count: number } {
  const groupOf = new Int32Array(metal.ids.length).fill(-1);
  spread(metal, there, groupOf, targets, 0);
  let count = 1;
  for (let n = 0; n < groupOf.length; n++) {
    if (groupOf[n] === -1) spread(metal, there, groupOf, [n], count++);
  }
  return { groupOf, count };
}

function spread(metal: Csr, there: Uint8Array, groupOf: Int32Array, starts: readonly number[], group: number): void {
  const reached = [...starts];
  for (const n of reached) groupOf[n] = group;
  for (const n of reached) {
    for (let r = metal.rows[n]!; r < metal.rows[n + 1]!; r++) {
      const next = metal.neighbours[r]!;
      if (there[metal.edges[r]!] === 0 || groupOf[next] !== -1) continue;
      groupOf[next] = group;
      reached.push(next);
    }
  }
}

/**
 * The block of the edge by which the walk came to each node, named by the first node that the walk met in it beyond
 * its top.
 */
function blocksOf({ order, place, low, parent }: Walk): Int32Array {
  const blocks = new Int32Array(place.length).fill(-1);
  for (const n of order) {
    const p = parent[n]!;
    if (p !== -1) blocks[n] = low[n]! >= place[p]! ? n : blocks[p]!;
  }
  return blocks;
}

/** Every edge that the walk met lies in the block of its later end. */
function edgesByBlock(metal: Csr, { place }: Walk, blocks: Int32Array, between: Int32Array): Map<number, string[]> {
  const keys = new Map<number, string[]>();
  metal.keys.forEach((key, e) => {
    const a = between[2 * e]!;
    const b = between[2 * e + 1]!;
    if (a === b || place[a] === -1) return;
    const block = blocks[place[a]! > place[b]! ? a : b]!;
    const held = keys.get(block);
    if (held === undefined) keys.set(block, [key]);
    else held.push(key);
  });
  return keys;
}

/** From block to block up to node 0. */
function decidingFor(
  group: number,
  { parent }: Walk,
  blocks: Int32Array,
  unknownIn: ReadonlyMap<number, readonly string[]>,
): string[] {
  const keys: string[] = [];
  for (let n = group; n !== 0; n = parent[blocks[n]!]!) {
    for (const key of unknownIn.get(blocks[n]!)!) keys.push(key);
  }
  return keys.sort();
}
