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

const MOST_SWEEPS = 200;

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
    if (farthestM <= graph.obstacles.toleranceM) break;
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

/** The least of the sum of weighted ways along the one piece that a join lies on, by golden section (the sum is convex). */
function onTrench(graph: RouteGraph, n: number, ways: readonly Way[]): Point | null {
  const pieces = [...new Set(ways.flatMap((w) => w.piece ?? []))];
  const piece = graph.pieces[pieces[0] ?? -1];
  if (piece === undefined || pieces.length > 1 || graph.nodes[n]!.kind !== 'join') return null;
  const sum = (share: number) => {
    const here = between(piece.a, piece.b, share);
    return ways.reduce((s, w) => s + distanceM(here, w.at) * (w.piece === null ? 1 : piece.factor), 0);
  };
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const [p, q] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (sum(p) <= sum(q)) high = q;
    else low = p;
  }
  return between(piece.a, piece.b, (low + high) / 2);
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
