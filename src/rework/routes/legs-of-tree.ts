import { between, distanceM, nearestShare, type Point } from './point.ts';
import type { RouteGraph } from './route-graph.ts';
import type { GraphTree } from './steiner-on-graph.ts';
import { neighboursOf } from './tree-shape.ts';
import type { TrenchPiece } from './trench-pieces.ts';

/** One piece of a route between two places where it begins, ends or branches. */
export interface Leg {
  /** Id of an end, or `junction 1` and so on. */
  readonly from: string;
  readonly to: string;
  readonly routeM: readonly Point[];
  readonly lengthM: number;
  /** How much of it lies in trenches that are there. */
  readonly inTrenchM: number;
}

export interface Legs {
  readonly legs: readonly Leg[];
  /** Numbers of the things at whose corners it bends, in order. */
  readonly around: readonly number[];
}

/**
 * The legs of a tree, walked from the first end on; at each place the neighbours in order of number. Along the metal of an
 * end no leg runs: it begins and ends where it meets that metal.
 */
export function legsOfTree(graph: RouteGraph, tree: GraphTree, ends: readonly number[], ids: readonly string[]): Legs {
  const isMetal = ([a, b]: readonly [number, number]) => (pieceOf(graph, a, b)?.end ?? null) !== null;
  const around = neighboursOf({ ...tree, edges: tree.edges.filter((e) => !isMetal(e)) });
  const stops = (n: number) => graph.nodes[n]!.end !== null || around.get(n)!.length !== 2;
  const order = outFrom(ends, neighboursOf(tree)).filter((n) => around.has(n) && stops(n));
  const junctions = order.filter((n) => graph.nodes[n]!.end === null);
  const nameOf = (n: number) => ids[graph.nodes[n]!.end ?? -1] ?? `junction ${junctions.indexOf(n) + 1}`;
  const walked = new Set<string>();
  const legs: Leg[] = [];
  const things = new Set<number>();
  for (const from of order) {
    for (const next of around.get(from)!) {
      if (walked.has(`${from} ${next}`)) continue;
      const way = [from, next];
      while (!stops(way.at(-1)!)) way.push(around.get(way.at(-1)!)!.find((n) => n !== way.at(-2))!);
      walked.add(`${way.at(-1)!} ${way.at(-2)!}`);
      legs.push(legOf(graph, way, nameOf));
      for (const t of thingsAt(graph, way)) things.add(t);
    }
  }
  return { legs, around: [...things].sort((a, b) => a - b) };
}

function pieceOf(graph: RouteGraph, a: number, b: number): TrenchPiece | null {
  return graph.pieces[graph.link(a, b)?.piece ?? -1] ?? null;
}

/** All nodes of a tree, from the first end on, nearest in number of pieces first. */
function outFrom(ends: readonly number[], around: ReadonlyMap<number, readonly number[]>): readonly number[] {
  const order = new Set(ends.slice(0, 1));
  for (const n of order) for (const next of around.get(n) ?? []) order.add(next);
  return [...order];
}

function legOf(graph: RouteGraph, way: readonly number[], nameOf: (n: number) => string): Leg {
  const { nodes, obstacles } = graph;
  const places = way.map((n) => nodes[n]!.at);
  const lengths = places.slice(1).map((p, i) => distanceM(places[i]!, p));
  const sum = (all: readonly number[]) => all.reduce((s, x) => s + x, 0);
  const trenchM = lengths.filter((_, i) => pieceOf(graph, way[i]!, way[i + 1]!) !== null);
  return {
    from: nameOf(way[0]!),
    to: nameOf(way.at(-1)!),
    routeM: withoutStraight(places, obstacles.toleranceM),
    lengthM: sum(lengths),
    inTrenchM: sum(trenchM),
  };
}

/** Without places that it goes straight on at; both ends stay. */
function withoutStraight(places: readonly Point[], toleranceM: number): readonly Point[] {
  const kept = [places[0]!];
  places.slice(1, -1).forEach((p, i) => {
    const [before, after] = [kept.at(-1)!, places[i + 2]!];
    if (distanceM(p, between(before, after, nearestShare(p, before, after))) > toleranceM) kept.push(p);
  });
  return [...kept, places.at(-1)!];
}

/** Things at whose corners a way bends, be it ever so little. */
function thingsAt({ nodes, obstacles }: RouteGraph, way: readonly number[]): readonly number[] {
  return way.slice(1, -1).flatMap((n, i) => {
    const [before, at, after] = [way[i]!, n, way[i + 2]!].map((m) => nodes[m]!.at) as [Point, Point, Point];
    const asideM = distanceM(at, between(before, after, nearestShare(at, before, after)));
    return asideM > obstacles.toleranceM ? nodes[n]!.things : [];
  });
}
