import { fermatPoint } from './fermat-point.ts';
import { between, distanceM, type Point } from './point.ts';
import type { RouteGraph } from './route-graph.ts';
import type { GraphTree } from './steiner-on-graph.ts';

/** Neighbours of each node of a tree, in order. */
export function neighboursOf(tree: GraphTree): ReadonlyMap<number, readonly number[]> {
  const found = new Map<number, number[]>();
  for (const [a, b] of tree.edges) {
    found.set(a, [...(found.get(a) ?? []), b]);
    found.set(b, [...(found.get(b) ?? []), a]);
  }
  return found;
}

/** Each round of new junctions begins where the one before ended, so that few sweeps do. */
const MOST_SWEEPS = 60;

/**
 * Where the junctions of a tree lie best, as long as it keeps its shape: each in turn is put where its ways are shortest in
 * sum (three ways 120 degrees apart), each join on a trench where it is best for what it joins, again and again until none
 * moves. A move that would run a way through a clearance is halved or left. Moved ones only, in order of node.
 */
export function settledPlaces(graph: RouteGraph, tree: GraphTree): ReadonlyMap<number, Point> {
  const around = neighboursOf(tree);
  const moved = new Map<number, Point>();
  const at = (n: number): Point => moved.get(n) ?? graph.nodes[n]!.at;
  const movable = [...around.keys()].filter((n) => graph.nodes[n]!.kind !== 'fixed').sort((a, b) => a - b);
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let farthestM = 0;
    for (const n of movable) {
      const place = bestPlace(graph, n, around.get(n)!, at);
      if (place === null) continue;
      farthestM = Math.max(farthestM, distanceM(place, at(n)));
      moved.set(n, place);
    }
    if (farthestM <= graph.obstacles.sameM) break;
  }
  return moved;
}

function bestPlace(graph: RouteGraph, n: number, near: readonly number[], at: (n: number) => Point): Point | null {
  const ways = near.map((m) => ({ at: at(m), piece: graph.link(n, m)?.piece ?? null }));
  const wanted = graph.nodes[n]!.kind === 'join' ? onTrench(graph, n, ways) : inTheOpen(ways);
  if (wanted === null) return null;
  const fresh = ways.filter((w) => w.piece === null).map((w) => w.at);
  for (let share = 1; share > 0.05; share /= 2) {
    const place = between(at(n), wanted, share);
    if (graph.obstacles.isClear(place) && fresh.every((p) => graph.obstacles.sees(place, p))) return place;
  }
  return null;
}

interface Way {
  readonly at: Point;
  readonly piece: number | null;
}

function inTheOpen(ways: readonly Way[]): Point | null {
  const [a, b, c] = ways;
  return ways.length === 3 ? fermatPoint(a!.at, b!.at, c!.at) : null;
}

/**
 * The least of the sum of weighted ways along the one piece that a join lies on: the sum is convex, so its slope is halved in
 * on where it turns from falling to rising.
 */
function onTrench(graph: RouteGraph, n: number, ways: readonly Way[]): Point | null {
  const pieces = [...new Set(ways.flatMap((w) => w.piece ?? []))];
  const piece = graph.pieces[pieces[0] ?? -1];
  if (piece === undefined || pieces.length > 1 || graph.nodes[n]!.kind !== 'join') return null;
  const { a, b, factor } = piece;
  const lengthM = distanceM(a, b);
  const [east, north] = [(b[0] - a[0]) / lengthM, (b[1] - a[1]) / lengthM];
  const terms = ways.map((w) => {
    const [dE, dN] = [w.at[0] - a[0], w.at[1] - a[1]];
    return { along: dE * east + dN * north, aside: dE * north - dN * east, weight: w.piece === null ? 1 : factor };
  });
  let [low, high] = [0, lengthM];
  for (let i = 0; i < HALVINGS; i++) {
    const at = (low + high) / 2;
    let slope = 0;
    for (const { along, aside, weight } of terms)
      slope += (weight * (at - along)) / (Math.hypot(at - along, aside) || 1);
    if (slope < 0) low = at;
    else high = at;
  }
  return between(a, b, (low + high) / 2 / lengthM);
}

const HALVINGS = 50;
