import type { Ground } from './ground.ts';
import { largeTree } from './large-tree.ts';
import { type Leg, legsOfTree } from './legs-of-tree.ts';
import { type NearestWays, nearestWays } from './nearest-ways.ts';
import { isPlace, obstaclesOf } from './obstacles.ts';
import { plainSteiner } from './plain-steiner.ts';
import { type RouteEnd, type RouteField, routeField } from './route-field.ts';
import type { RouteGraph } from './route-graph.ts';
import { smallTree } from './small-tree.ts';
import { prunedTree, spanningTree } from './spanning-tree.ts';

export type { Leg } from './legs-of-tree.ts';
export type { RouteEnd } from './route-field.ts';

export interface FoundRoute {
  readonly none: null;
  readonly lengthM: number;
  readonly legs: readonly Leg[];
  /** Ids of the things that it goes round, in order. */
  readonly around: readonly string[];
  readonly inTrenchM: number;
  /** Its length, a metre in a trench taken as its factor. */
  readonly costM: number;
  /** Proved: no route costs less. */
  readonly costAtLeastM: number;
}

/** No route: some ends have no place, cannot be left, or are reached by no way that keeps all clearances. */
export interface NoWay {
  readonly none: 'no places' | 'shut in' | 'no way';
  readonly at: readonly string[];
}

/** Up to so many ends a tree is looked for with Dreyfus and Wagner's algorithm. */
const MOST_EXACT = 6;

/**
 * The cheapest route on the flat that joins all ends, keeps all clearances and may branch anywhere.
 *
 * - Two ends: exact. Dijkstra's algorithm over the corners of clearances and the best joining places of trenches.
 * - Three to six: Dreyfus and Wagner's tree over the same places and junctions added round by round (`smallTree`).
 * - More: ways of a spanning tree, at most 2 (1 - 1/k) times the shortest, then pieces of it solved anew (`largeTree`).
 *
 * `costAtLeastM` bounds from below what any route costs, so that what was found can be judged. An end inside a clearance is
 * left by the shortest way out (`waysOut`), which counts in the length. Lengths in metres. The same input gives the same
 * route; of routes that are equally long it may be any.
 */
export function shortestRoutes(ground: Ground, ends: readonly RouteEnd[]): FoundRoute | NoWay {
  const nowhere = ends.filter((e) => !e.placesM.some(isPlace));
  if (nowhere.length > 0) return { none: 'no places', at: nowhere.map((e) => e.id) };
  const obstacles = obstaclesOf(
    ground,
    ends.flatMap((e) => e.placesM.filter(isPlace)),
  );
  const field = routeField(ground, ends, obstacles);
  if (ends.length > 1 && field.shutIn.length > 0) return { none: 'shut in', at: field.shutIn.map((i) => ends[i]!.id) };
  const { graph } = field;
  // Of two ends the ways from one say all.
  const starts = field.ends.length === 2 ? field.ends.slice(0, 1) : field.ends;
  const ways = starts.map((n) => nearestWays(graph, n, { wanted: field.ends }));
  const cut = ends.filter((_, i) => !(ways[0]!.costM[field.ends[i]!]! < Infinity));
  if (cut.length > 0) return { none: 'no way', at: cut.map((e) => e.id) };
  const { tree, atLeastM } = treeOf(field, ways);
  const ids = ends.map((e) => e.id);
  const { legs, around } = legsOfTree(graph, tree, field.ends, ids);
  return {
    none: null,
    lengthM: legs.reduce((sum, l) => sum + l.lengthM, 0),
    legs,
    around: around.map((t) => obstacles.things[t]!.id),
    inTrenchM: legs.reduce((sum, l) => sum + l.inTrenchM, 0),
    costM: tree.costM,
    costAtLeastM: Math.min(tree.costM, atLeastM),
  };
}

function treeOf({ graph, ends }: RouteField, ways: readonly NearestWays[]) {
  const spanning = spanningTree(graph, ends, ways)!;
  if (ends.length < 3) return { tree: spanning, atLeastM: spanning.costM };
  const found = ends.length > MOST_EXACT ? largeTree(graph, ends, spanning) : smallTree(graph, ends, spanning.costM);
  const tree = prunedTree(graph, ends, (found !== null && found.costM < spanning.costM ? found : spanning).edges);
  const farthestM = ways.reduce((most, w) => ends.reduce((m, n) => Math.max(m, w.costM[n]!), most), 0);
  return { tree, atLeastM: Math.max(farthestM, spanning.atLeastM, openBoundM(graph, ends)) };
}

/** What a tree in the open costs at least where every end is a place; all ways taken as trenches where there are any. */
function openBoundM({ nodes, pieces }: RouteGraph, ends: readonly number[]): number {
  if (ends.length > MOST_EXACT) return 0;
  const least = pieces.reduce((f, p) => Math.min(f, p.factor), 1);
  return least === 0 ? 0 : plainSteiner(ends.map((n) => nodes[n]!.at)).atLeastM * least;
}
