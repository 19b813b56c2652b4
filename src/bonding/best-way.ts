import type { MultiUndirectedGraph } from 'graphology';
import type { Interval } from '../math/interval.ts';
import { type Choice, type Csr, chosenNode, csr } from './csr.ts';
import { numberHeap } from './number-heap.ts';

export interface BestWayOptions extends Choice {
  /** false: a way may begin or end at this node, but not pass through it. Left out: all may be passed. */
  readonly passes?: (id: string) => boolean;
}

export interface BestWay {
  /** From the node that was asked for to the target, both included. */
  readonly nodes: readonly string[];
  /** `edges[i]` joins `nodes[i]` and `nodes[i + 1]`; of parallel edges, the one that is meant. */
  readonly edges: readonly string[];
  /** How many of the edges have no known length. */
  readonly unknownLengths: number;
  /** Sum of the least lengths of the others, metres. */
  readonly lengthAtLeastM: number;
}

/**
 * The best way from any node to the nearest target: fewest edges of unknown length, then least sum of `lengthM.low`,
 * then fewest edges, then first by the ids and keys passed, read from the node to the target (the next node's id, then
 * the edge's key). The order in which the graph was built changes nothing. Lengths are compared in whole nanometres, in
 * which every inch fraction down to 1/64 is exact, so equal lengths are equal. Ask the answer for one node at a time:
 * null where there is no way.
 *
 * Edges carry `lengthM: Interval | null`; anything else, NaN and negative lengths throw RangeError: an unknown length
 * never counts as a number. So do ids that the graph has not. Multi-source Dijkstra with a binary heap.
 */
export function bestWays(
  graph: MultiUndirectedGraph,
  targets: readonly string[],
  options: BestWayOptions = {},
): (from: string) => BestWay | null {
  const metal = csr(graph, options);
  const lengths = lengthsOf(graph, metal);
  const ends = targets.map((id) => chosenNode(graph, metal, id)).filter((n) => n !== null);
  const labels = labelAll(metal, lengths, ends, options.passes ?? (() => true));
  return (from) => {
    const n = chosenNode(graph, metal, from);
    return n === null || labels.edges[n] === -1 ? null : wayFrom(metal, lengths, labels, n);
  };
}

/** Of each edge: its least length in metres; NaN stands for unknown and is never added or compared. */
function lengthsOf(graph: MultiUndirectedGraph, metal: Csr): Float64Array {
  return Float64Array.from(metal.keys, (key) => {
    const length: Interval | null | undefined = graph.getEdgeAttribute(key, 'lengthM');
    if (length === null) return Number.NaN;
    if (!(Number.isFinite(length?.low) && length!.low >= 0)) throw new RangeError(`edge ${key} has no usable lengthM`);
    return length!.low;
  });
}

/** What is known of the way from each node: its cost, and the edge that it takes first. */
interface Labels {
  readonly unknown: Int32Array;
  readonly lengthNm: Float64Array;
  readonly edges: Int32Array;
  readonly edge: Int32Array;
}

/** `edges` is -1 where no way is known; `edge` is -1 at a target. */
function labelAll(
  metal: Csr,
  lengths: Float64Array,
  targets: readonly number[],
  passes: (id: string) => boolean,
): Labels {
  const count = metal.ids.length;
  const labels: Labels = {
    unknown: new Int32Array(count),
    lengthNm: new Float64Array(count),
    edges: new Int32Array(count).fill(-1),
    edge: new Int32Array(count).fill(-1),
  };
  const heap = numberHeap(count, (a, b) => compareCost(labels, a, b) < 0);
  for (const n of new Set(targets)) {
    labels.edges[n] = 0;
    heap.raise(n);
  }
  for (let n = heap.takeFirst(); n !== -1; n = heap.takeFirst()) {
    if (labels.edge[n] !== -1 && !passes(metal.ids[n]!)) continue;
    for (let r = metal.rows[n]!; r < metal.rows[n + 1]!; r++) {
      const next = metal.neighbours[r]!;
      if (offer(metal, lengths, labels, n, metal.edges[r]!, next)) heap.raise(next);
    }
  }
  return labels;
}

function compareCost({ unknown, lengthNm, edges }: Labels, a: number, b: number): number {
  return unknown[a]! - unknown[b]! || lengthNm[a]! - lengthNm[b]! || edges[a]! - edges[b]!;
}

/** Lets `next` go by edge e to n, if that is better than what it has; true when it costs less than before. */
function offer(metal: Csr, lengths: Float64Array, labels: Labels, n: number, e: number, next: number): boolean {
  const length = lengths[e]!;
  const isUnknown = Number.isNaN(length);
  const unknown = labels.unknown[n]! + (isUnknown ? 1 : 0);
  const lengthNm = labels.lengthNm[n]! + (isUnknown ? 0 : Math.round(length * 1e9));
  const edges = labels.edges[n]! + 1;
  const isFirst = labels.edges[next] === -1;
  const gain = labels.unknown[next]! - unknown || labels.lengthNm[next]! - lengthNm || labels.edges[next]! - edges;
  if (!isFirst && gain < 0) return false;
  if (!isFirst && gain === 0 && !comesFirst(metal, labels.edge[next]!, e, next)) return false;
  labels.unknown[next] = unknown;
  labels.lengthNm[next] = lengthNm;
  labels.edges[next] = edges;
  labels.edge[next] = e;
  return isFirst || gain > 0;
}

/** Whether edge e from a node comes before its edge `held`: by the id at the other end, then by key. */
function comesFirst(metal: Csr, held: number, e: number, node: number): boolean {
  const heldTo = metal.ids[otherEnd(metal, held, node)]!;
  const to = metal.ids[otherEnd(metal, e, node)]!;
  return to === heldTo ? metal.keys[e]! < metal.keys[held]! : to < heldTo;
}

function otherEnd({ ends }: Csr, edge: number, node: number): number {
  return ends[2 * edge] === node ? ends[2 * edge + 1]! : ends[2 * edge]!;
}

function wayFrom(metal: Csr, lengths: Float64Array, labels: Labels, from: number): BestWay {
  const nodes = [metal.ids[from]!];
  const edges: string[] = [];
  let lengthAtLeastM = 0;
  for (let n = from; labels.edge[n] !== -1; ) {
    const e = labels.edge[n]!;
    if (!Number.isNaN(lengths[e])) lengthAtLeastM += lengths[e]!;
    n = otherEnd(metal, e, n);
    nodes.push(metal.ids[n]!);
    edges.push(metal.keys[e]!);
  }
  return { nodes, edges, unknownLengths: labels.unknown[from]!, lengthAtLeastM };
}
