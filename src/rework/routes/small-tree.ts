import { addSettled, firstJunctions, nextJunctions } from './junction-places.ts';
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
/** So many new junctions a round are linked to trenches, each at so many places: the most promising stand first. */
const JOINED = 24;
const JOINS = 4;

/**
 * A shortest tree that joins 3 to 6 ends. Dreyfus and Wagner's tree over the places of the graph, with places to branch at
 * added round by round: those of the first round between ends and corners, then those near the tree found, its own moved to
 * where they lie best. Each round can only shorten it. Exact over the places tried; `plainSteiner` proves it where nothing
 * is in the way. `knownM` is what some tree costs. null: no tree over the places asked costs as little.
 */
export function smallTree(graph: RouteGraph, ends: readonly number[], knownM: number): GraphTree | null {
  const ways = ends.map((n) => nearestWays(graph, n, { mostM: knownM }));
  const base = placesWithin(graph, ends, ways, knownM);
  const own = graph.copy();
  let best = treeOver(own, ends, [...base, ...addJunctions(own, firstJunctions(own, ends, base, ways))]);
  for (let round = 0; best !== null && round < MOST_ROUNDS; round++) {
    const fresh = [...addSettled(own, best), ...addJunctions(own, nextJunctions(own, best, base))];
    const next = treeOver(own, ends, [...base, ...best.edges.flat(), ...fresh]);
    if (next === null || !(next.costM < best.costM)) break;
    const gain = best.costM - next.costM;
    best = next;
    if (gain <= LITTLE * best.costM) break;
  }
  return best === null ? null : takenOver(graph, own, best);
}

/** The tree of a copy in the numbers of the graph, its junctions and joins added there. */
function takenOver(graph: RouteGraph, copy: RouteGraph, tree: GraphTree): GraphTree {
  const count = graph.nodes.length;
  const numbers = new Map<number, number>();
  const numberOf = (n: number): number => {
    if (n < count) return n;
    const known = numbers.get(n) ?? graph.add(copy.nodes[n]!);
    numbers.set(n, known);
    return known;
  };
  const edges = tree.edges.map(([a, b]): readonly [number, number] => {
    const [from, to] = [numberOf(a), numberOf(b)];
    if (graph.link(from, to) === null) graph.join(from, to);
    return [Math.min(from, to), Math.max(from, to)];
  });
  return { costM: tree.costM, edges };
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

/** Adds junctions, and joins on the nearest trenches for the first of them; gives the numbers of both. */
function addJunctions(graph: RouteGraph, places: readonly Point[]): readonly number[] {
  return places.flatMap((at, i) => {
    const n = graph.add({ at, end: null, things: [], cones: [], kind: 'junction' });
    return [n, ...(i < JOINED ? addJoins(graph, n, { branches: true, most: JOINS }) : [])];
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
