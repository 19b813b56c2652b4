import { fermatPoint } from './fermat-point.ts';
import type { NearestWays } from './nearest-ways.ts';
import { plainSteiner } from './plain-steiner.ts';
import { distanceM, type Point } from './point.ts';
import type { RouteGraph } from './route-graph.ts';
import type { GraphTree } from './steiner-on-graph.ts';
import { neighboursOf, settledPlaces } from './tree-shape.ts';

/** So many places, those that lie least out of the way first, are taken three by three. */
const MOST_CORNERS = 22;
/** So many junctions are tried at once. */
const MOST_JUNCTIONS = 150;
/** So many are tried at once near a tree that is known. */
const MOST_NEXT = 80;
/** Places near a junction that are taken three by three with it. */
const NEAR_JUNCTION = 10;

/**
 * Places to branch at before anything is known of the tree: where the shortest tree in the open branches, and the places
 * 120 degrees from three of the ends and corners that lie least out of the way and see it.
 */
export function firstJunctions(
  graph: RouteGraph,
  ends: readonly number[],
  active: readonly number[],
  ways: readonly NearestWays[],
): readonly Point[] {
  const near = active.filter((n) => graph.nodes[n]!.kind === 'fixed').slice(0, MOST_CORNERS);
  const open = ends.length > 2 && ends.length < 7 ? plainSteiner(ends.map((n) => graph.nodes[n]!.at)).junctions : [];
  const found = triples(near).flatMap((three) => {
    const at = junctionOf(graph, three);
    if (at === null) return [];
    const farM = ends.reduce((sum, _, i) => {
      const by = three.map((n) => ways[i]!.costM[n]! + distanceM(at, graph.nodes[n]!.at));
      return sum + Math.min(...by);
    }, 0);
    return [{ at, farM }];
  });
  const sorted = found.sort((a, b) => a.farM - b.farM || a.at[0] - b.at[0] || a.at[1] - b.at[1]);
  return [...open.filter((p) => graph.obstacles.isClear(p)), ...sorted.slice(0, MOST_JUNCTIONS).map((f) => f.at)];
}

/**
 * Places to branch at near a tree that is known: those 120 degrees from three of: what a node of the tree is joined to, the
 * node itself, and for a junction the places near that it sees.
 */
export function nextJunctions(graph: RouteGraph, tree: GraphTree, active: readonly number[]): readonly Point[] {
  const found = [...neighboursOf(tree)].flatMap(([n, near]) => {
    const own = graph.nodes[n]!.kind === 'junction' ? [...near, ...seenFrom(graph, n, active)] : [n, ...near];
    return triples([...new Set(own)]).map((three) => junctionOf(graph, three));
  });
  return found.filter((p): p is Point => p !== null).slice(0, MOST_NEXT);
}

/** Adds the junctions and joins of a tree where they lie best (`settledPlaces`), with their links; gives their numbers. */
export function addSettled(graph: RouteGraph, tree: GraphTree): readonly number[] {
  const moved = [...settledPlaces(graph, tree)];
  const added = new Map(moved.map(([n, at]) => [n, graph.add({ ...graph.nodes[n]!, at })] as const));
  const now = (n: number) => added.get(n) ?? n;
  for (const [a, b] of tree.edges) {
    if (!(added.has(a) || added.has(b)) || graph.link(a, b)?.piece !== null) continue;
    const [from, to] = [now(a), now(b)];
    if (graph.link(from, to) === null && graph.obstacles.sees(graph.nodes[from]!.at, graph.nodes[to]!.at)) {
      graph.join(from, to);
    }
  }
  return [...added.values()];
}

/** Fixed places that a junction sees, nearest first. */
function seenFrom(graph: RouteGraph, n: number, active: readonly number[]): readonly number[] {
  const { at } = graph.nodes[n]!;
  return active
    .filter((m) => graph.nodes[m]!.kind === 'fixed')
    .sort((a, b) => distanceM(graph.nodes[a]!.at, at) - distanceM(graph.nodes[b]!.at, at) || a - b)
    .filter((m) => graph.link(n, m) !== null)
    .slice(0, NEAR_JUNCTION);
}

/** The place 120 degrees from three places; null where it is one of them, is not clear, or does not see all. */
function junctionOf({ nodes, obstacles }: RouteGraph, three: readonly number[]): Point | null {
  const [p, q, r] = three.map((n) => nodes[n]!.at) as [Point, Point, Point];
  const at = fermatPoint(p, q, r);
  if ([p, q, r].some((end) => distanceM(end, at) <= obstacles.sameM)) return null;
  return obstacles.isClear(at) && [p, q, r].every((end) => obstacles.sees(at, end)) ? at : null;
}

function triples(all: readonly number[]): readonly (readonly [number, number, number])[] {
  return all.flatMap((a, i) =>
    all.slice(i + 1).flatMap((b, j) => all.slice(i + j + 2).map((c): readonly [number, number, number] => [a, b, c])),
  );
}
