import type { MultiUndirectedGraph } from 'graphology';
import { type Choice, type Csr, csr } from './csr.ts';

/**
 * The nodes that hang together by the chosen edges: each list sorted by id, the lists by their first id. A node without
 * edges is a list of its own. Time: linear, but for the sorting.
 */
export function components(graph: MultiUndirectedGraph, choice: Choice = {}): string[][] {
  const metal = csr(graph, choice);
  const seen = new Uint8Array(metal.ids.length);
  const lists: string[][] = [];
  for (let n = 0; n < seen.length; n++) {
    if (seen[n] === 1) continue;
    lists.push(
      reachedFrom(metal, n, seen)
        .map((r) => metal.ids[r]!)
        .sort(),
    );
  }
  return lists.sort((a, b) => (a[0]! < b[0]! ? -1 : 1));
}

/** Every node that can be reached from `start`, itself included, marked in `seen`. */
export function reachedFrom(metal: Csr, start: number, seen: Uint8Array): number[] {
  const reached = [start];
  seen[start] = 1;
  for (let i = 0; i < reached.length; i++) {
    const n = reached[i]!;
    for (let r = metal.rows[n]!; r < metal.rows[n + 1]!; r++) {
      const next = metal.neighbours[r]!;
      if (seen[next] === 1) continue;
      seen[next] = 1;
      reached.push(next);
    }
  }
  return reached;
}
