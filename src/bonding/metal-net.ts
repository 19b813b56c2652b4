import { type Csr, csr, rowsOf } from './csr.ts';
import type { BondingGraph } from './graph-builder.ts';
import type { NodeFacts, Tie } from './tie.ts';

/** A graph as arrays, with the facts of each node and the tie of each edge: read once, asked often. */
export interface MetalNet extends Csr {
  readonly nodes: readonly NodeFacts[];
  readonly ties: readonly Tie[];
}

export function metalNet(graph: BondingGraph): MetalNet {
  const nodes: NodeFacts[] = [];
  const ties: Tie[] = [];
  graph.forEachNode((_id, facts) => nodes.push(facts));
  graph.forEachEdge((_key, tie) => ties.push(tie));
  return { ...csr(graph), nodes, ties };
}

/** The same nodes with the ties that count. */
export function narrowed(net: MetalNet, counts: (tie: Tie) => boolean): MetalNet {
  const kept = net.ties.flatMap((tie, e) => (counts(tie) ? [e] : []));
  const ends = Int32Array.from(kept.flatMap((e) => [net.ends[2 * e]!, net.ends[2 * e + 1]!]));
  const [keys, ties] = [kept.map((e) => net.keys[e]!), kept.map((e) => net.ties[e]!)];
  return { ...net, keys, ties, ends, ...rowsOf(net.ids.length, ends) };
}

/** A net while it is put together. */
export interface NetBuilder {
  /** Adds the node if it is not there yet; its number. */
  readonly addNode: (id: string, facts: NodeFacts) => number;
  /** Joins two different nodes, unless the key was there before. */
  readonly addTie: (key: string, a: number, b: number, tie: Tie) => void;
  readonly net: () => MetalNet;
}

export function netBuilder(): NetBuilder {
  const numberOf = new Map<string, number>();
  const nodes: NodeFacts[] = [];
  const keys = new Set<string>();
  const ties: Tie[] = [];
  const ends: number[] = [];
  return {
    addNode: (id, facts) => {
      const known = numberOf.get(id);
      if (known !== undefined) return known;
      numberOf.set(id, nodes.length);
      return nodes.push(facts) - 1;
    },
    addTie: (key, a, b, tie) => {
      if (a === b || keys.has(key)) return;
      keys.add(key);
      ties.push(tie);
      ends.push(a, b);
    },
    net: () => {
      const pairs = Int32Array.from(ends);
      const ids = [...numberOf.keys()];
      return { ids, numberOf, nodes, keys: [...keys], ties, ends: pairs, ...rowsOf(ids.length, pairs) };
    },
  };
}

/** Piece number of each node when only these ties count; pieces are numbered in the order of their first node. */
export function piecesOf(
  net: MetalNet,
  counts: (tie: Tie) => boolean,
): { readonly of: Int32Array; readonly count: number } {
  const of = new Int32Array(net.ids.length).fill(-1);
  const chosen = Uint8Array.from(net.ties, (tie) => (counts(tie) ? 1 : 0));
  let count = 0;
  for (let n = 0; n < of.length; n++) if (of[n] === -1) spread(net, chosen, of, n, count++);
  return { of, count };
}

function spread(net: MetalNet, chosen: Uint8Array, of: Int32Array, start: number, piece: number): void {
  const reached = [start];
  of[start] = piece;
  for (let i = 0; i < reached.length; i++) {
    const n = reached[i]!;
    for (let r = net.rows[n]!; r < net.rows[n + 1]!; r++) {
      const next = net.neighbours[r]!;
      if (of[next] !== -1 || chosen[net.edges[r]!] === 0) continue;
      of[next] = piece;
      reached.push(next);
    }
  }
}
