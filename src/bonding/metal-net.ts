import { type Csr, csr } from './csr.ts';
import type { BondingGraph } from './graph-builder.ts';
import type { Tie } from './tie.ts';

/** The whole graph as arrays, with the tie of each edge: read once, asked often. */
export interface MetalNet extends Csr {
  readonly ties: readonly Tie[];
}

export function metalNet(graph: BondingGraph): MetalNet {
  const net = csr(graph);
  return { ...net, ties: net.keys.map((key) => graph.getEdgeAttributes(key)) };
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
