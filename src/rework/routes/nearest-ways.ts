import { distanceM } from './point.ts';
import type { RouteGraph } from './route-graph.ts';

/** Cheapest ways from one place to all that are near enough. */
export interface NearestWays {
  /** Infinity for what is farther than asked for, or cannot be reached. */
  readonly costM: Float64Array;
  /** Places from the start to `to`, both ends included; null where it cannot be reached. */
  readonly way: (to: number) => readonly number[] | null;
}

/** What ends a search: how far it goes, or what it is to reach. */
export interface Search {
  readonly mostM?: number;
  readonly wanted?: readonly number[] | null;
}

/**
 * Dijkstra's algorithm from one place, as far as `mostM`, or until all of `wanted` are reached; with a single one wanted the
 * places that lie towards it go first (A*, by the straight distance at the least factor of all trenches). Of places that are
 * equally far the first in number goes first, so that the ways are the same on every run.
 */
export function nearestWays(graph: RouteGraph, from: number, { mostM = Infinity, wanted = null }: Search): NearestWays {
  const count = graph.nodes.length;
  const costM = new Float64Array(count).fill(Infinity);
  const before = new Int32Array(count).fill(-1);
  const isDone = new Uint8Array(count);
  const left = new Set(wanted ?? []);
  const aheadM = estimate(
    graph,
    [...left].filter((n) => n !== from),
  );
  costM[from] = 0;
  for (;;) {
    const at = nearestOpen(costM, aheadM, isDone);
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

/** What the way on from each place costs at least; 0 where several are wanted, or none. */
function estimate({ nodes, pieces }: RouteGraph, wanted: readonly number[]): Float64Array {
  const least = pieces.reduce((f, p) => Math.min(f, p.factor), 1);
  const aim = wanted.length === 1 && least > 0 ? nodes[wanted[0]!]!.at : null;
  // A hair less, so that rounding never makes it too much.
  return Float64Array.from(nodes, (n) => (aim === null ? 0 : distanceM(n.at, aim) * least * (1 - 1e-12)));
}

function nearestOpen(costM: Float64Array, aheadM: Float64Array, isDone: Uint8Array): number {
  let best = -1;
  let leastM = Infinity;
  for (let i = 0; i < costM.length; i++) {
    if (isDone[i] === 0 && costM[i]! + aheadM[i]! < leastM) {
      best = i;
      leastM = costM[i]! + aheadM[i]!;
    }
  }
  return best;
}

function wayBack(before: Int32Array, to: number): readonly number[] {
  const way = [to];
  for (let at = before[to]!; at >= 0; at = before[at]!) way.push(at);
  return way.reverse();
}
