import type { RouteGraph } from './route-graph.ts';

/** Cheapest ways from one place to all that are near enough. */
export interface NearestWays {
  /** Infinity for what is farther than asked for, or cannot be reached. */
  readonly costM: Float64Array;
  /** Places from the start to `to`, both ends included; null where it cannot be reached. */
  readonly way: (to: number) => readonly number[] | null;
}

/**
 * Dijkstra's algorithm from one place, as far as `mostM`, or until all of `wanted` are reached. Of places that are equally
 * far the first in number goes first, so that the ways are the same on every run.
 */
export function nearestWays(
  graph: RouteGraph,
  from: number,
  { mostM = Infinity, wanted = null }: { readonly mostM?: number; readonly wanted?: readonly number[] | null },
): NearestWays {
  const count = graph.nodes.length;
  const costM = new Float64Array(count).fill(Infinity);
  const before = new Int32Array(count).fill(-1);
  const isDone = new Uint8Array(count);
  const left = new Set(wanted ?? []);
  costM[from] = 0;
  for (;;) {
    const at = nearestOpen(costM, isDone);
    if (at < 0 || costM[at]! > mostM) break;
    isDone[at] = 1;
    left.delete(at);
    if (wanted !== null && left.size === 0) break;
    for (const link of graph.links(at)) {
      const cost = costM[at]! + link.costM;
      if (cost < costM[link.to]!) {
        costM[link.to] = cost;
        before[link.to] = at;
      }
    }
  }
  for (let i = 0; i < count; i++) if (isDone[i] === 0) costM[i] = Infinity;
  return { costM, way: (to) => (costM[to]! < Infinity ? wayBack(before, to) : null) };
}

function nearestOpen(costM: Float64Array, isDone: Uint8Array): number {
  let best = -1;
  for (let i = 0; i < costM.length; i++) {
    if (isDone[i] === 0 && costM[i]! < (best < 0 ? Infinity : costM[best]!)) best = i;
  }
  return best;
}

function wayBack(before: Int32Array, to: number): readonly number[] {
  const way = [to];
  for (let at = before[to]!; at >= 0; at = before[at]!) way.push(at);
  return way.reverse();
}
