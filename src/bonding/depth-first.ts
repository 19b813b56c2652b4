import type { Rows } from './csr.ts';

/**
 * One depth-first walk of a graph. Places count from 0 in the order of first visit, so that what hangs below a node in
 * the walk stands in one stretch of `order`: from its own place up to, without, `after`.
 */
export interface Walk {
  readonly order: Int32Array;
  /** Node → its place; -1 where the walk did not come. */
  readonly place: Int32Array;
  readonly after: Int32Array;
  /** Least place that the node or anything below it touches, other than by the edge that led there. */
  readonly low: Int32Array;
  /** Node and edge by which the walk first came; -1 at a start. */
  readonly parent: Int32Array;
  readonly by: Int32Array;
}

/**
 * Walks from each start in turn, without recursion (a chain of 100 000 joints must not end the stack). The way back is
 * barred by edge, not by node: a second bond between the same two nodes is a way round. Linear time. After R. E.
 * Tarjan, "Depth-first search and linear graph algorithms", SIAM J. Comput. 1 (1972) 146-160.
 */
export function depthFirst(metal: Rows, starts: ArrayLike<number>): Walk {
  const walk = emptyWalk(metal.rows.length - 1);
  const cursor = metal.rows.slice(0, metal.rows.length - 1);
  let visited = 0;
  for (let i = 0; i < starts.length; i++) {
    if (walk.place[starts[i]!] === -1) visited = walkFrom(metal, walk, cursor, starts[i]!, visited);
  }
  return { ...walk, order: walk.order.subarray(0, visited) };
}

/** The numbers 0 to count - 1: every node as a start. */
export function allNodes(metal: Rows): Int32Array {
  return new Int32Array(metal.rows.length - 1).map((_zero, n) => n);
}

function emptyWalk(count: number): Walk {
  return {
    order: new Int32Array(count),
    place: new Int32Array(count).fill(-1),
    after: new Int32Array(count),
    low: new Int32Array(count),
    parent: new Int32Array(count).fill(-1),
    by: new Int32Array(count).fill(-1),
  };
}

/** `cursor` keeps how far each row has been followed. Returns how many nodes have been visited by now. */
function walkFrom(metal: Rows, walk: Walk, cursor: Int32Array, start: number, visitedBefore: number): number {
  const { rows, neighbours, edges } = metal;
  const { order, place, after, low, parent, by } = walk;
  let visited = visitedBefore;
  order[visited] = start;
  low[start] = visited;
  place[start] = visited++;
  for (let n = start; ; ) {
    const r = cursor[n]!;
    if (r === rows[n + 1]!) {
      after[n] = visited;
      const p = parent[n]!;
      if (p === -1) return visited;
      if (low[n]! < low[p]!) low[p] = low[n]!;
      n = p;
      continue;
    }
    cursor[n] = r + 1;
    if (edges[r] === by[n]) continue;
    const next = neighbours[r]!;
    const seenAt = place[next]!;
    if (seenAt !== -1) {
      if (seenAt < low[n]!) low[n] = seenAt;
      continue;
    }
    parent[next] = n;
    by[next] = edges[r]!;
    order[visited] = next;
    low[next] = visited;
    place[next] = visited++;
    n = next;
  }
}
