import { firstJunctions, nextJunctions } from './junction-places.ts';
import { type NearestWays, nearestWays } from './nearest-ways.ts';
import type { Point } from './point.ts';
import { addJoins } from './route-field.ts';
import type { RouteGraph } from './route-graph.ts';
import { type GraphTree, steinerOnGraph } from './steiner-on-graph.ts';

/** No more places than these are asked at once; those least out of the way. */
const MOST_PLACES = 420;
/** Rounds of new junctions; they end when one brings less than this share. */
const MOST_ROUNDS = 12;
const LITTLE = 1e-10;

/**
 * A shortest tree that joins 3 to 6 ends. Dreyfus and Wagner's tree over the places of the graph, with places to branch at
 * added round by round: those of the first round between ends and corners, then those near the tree found, its own moved to
 * where they lie best. Each round can only shorten it. Exact over the places tried; `plainSteiner` proves it where nothing
 * is in the way. `knownM` is what some tree costs.
 */
export function smallTree(graph: RouteGraph, ends: readonly number[], knownM: number): GraphTree {
  const ways = ends.map((n) => nearestWays(graph, n, { mostM: knownM }));
  const base = placesWithin(graph, ends, ways, knownM);
  let places = [...base, ...addJunctions(graph, firstJunctions(graph, ends, base, ways))];
  let best: GraphTree = treeOver(graph, ends, places) ?? { costM: Infinity, edges: [] };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const fresh = addJunctions(graph, nextJunctions(graph, best, base));
    places = [...base, ...best.edges.flat(), ...fresh];
    const next = treeOver(graph, ends, places);
    if (next === null || !(next.costM < best.costM)) break;
    const gain = best.costM - next.costM;
    best = next;
    if (gain <= LITTLE * best.costM) break;
  }
  return best;
}

/**
 * Places that a tree of at most `mostM` can pass: from any two ends to the place and back to each other is at most twice
 * that. The least out of the way first.
 */
function placesWithin(
  graph: RouteGraph,
  ends: readonly number[],
  ways: readonly NearestWays[],
  mostM: number,
): number[] {
  const outOfWay = (n: number) => {
    let farM = 0;
    ways.forEach((a, i) => {
      for (let j = 0; j < i; j++) {
        farM = Math.max(farM, (a.costM[n]! + ways[j]!.costM[n]! + a.costM[ends[j]!]!) / 2);
      }
    });
    return farM;
  };
  return graph.nodes
    .map((_, n) => ({ n, farM: ends.includes(n) ? -1 : outOfWay(n) }))
    .filter((x) => x.farM <= mostM * (1 + 1e-9))
    .sort((a, b) => a.farM - b.farM || a.n - b.n)
    .slice(0, MOST_PLACES)
    .map((x) => x.n);
}

/** Adds junctions and their joins on trenches; gives the numbers of both. */
function addJunctions(graph: RouteGraph, places: readonly Point[]): readonly number[] {
  return places.flatMap((at) => {
    const n = graph.add({ at, end: null, things: [], cones: [], kind: 'junction' });
    return [n, ...addJoins(graph, n)];
  });
}

function treeOver(graph: RouteGraph, ends: readonly number[], places: readonly number[]): GraphTree | null {
  const all = [...new Set([...ends, ...places])].sort((a, b) => a - b);
  const cost = new Float64Array(all.length * all.length).fill(Infinity);
  all.forEach((a, i) => {
    for (let j = 0; j < i; j++) {
      const costM = graph.link(a, all[j]!)?.costM ?? Infinity;
      cost[i * all.length + j] = costM;
      cost[j * all.length + i] = costM;
    }
  });
  const tree = steinerOnGraph(
    all.length,
    cost,
    ends.map((n) => all.indexOf(n)),
  );
  return tree === null ? null : { costM: tree.costM, edges: tree.edges.map(([a, b]) => [all[a]!, all[b]!]) };
}
