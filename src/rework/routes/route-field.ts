import { cornersOf } from './corners.ts';
import { crossing, entersThing } from './enters-thing.ts';
import type { Ground } from './ground.ts';
import { isPlace, type Obstacles } from './obstacles.ts';
import { between, distanceM, type Point } from './point.ts';
import { type RouteGraph, type RouteNode, routeGraph } from './route-graph.ts';
import { bestJoins, type TrenchPiece, trenchPieces } from './trench-pieces.ts';
import { waysOut } from './ways-out.ts';

/** What a route begins or ends at: a place, or a run of metal that may be met anywhere along it. */
export interface RouteEnd {
  readonly id: string;
  readonly placesM: readonly Point[];
}

/** The places that routes between some ends may bend at or join a trench at. */
export interface RouteField {
  readonly graph: RouteGraph;
  /** The place of each end, in their order. */
  readonly ends: readonly number[];
  /** Ends that cannot be left. */
  readonly shutIn: readonly number[];
}

/**
 * All places of which a shortest route is made: ends and their ways out, corners of clearances, ends and crossings of
 * trenches, and on each trench the best joining places of each of those. A shortest route between two ends is found exactly
 * among them: between bends it is straight, it bends only at corners and at trenches, and where it goes from the middle of
 * one trench to the middle of another it can be slid along both, at no cost, until it meets one of these places.
 */
export function routeField(ground: Ground, ends: readonly RouteEnd[], obstacles: Obstacles): RouteField {
  const runs = ends.map((e) => e.placesM.filter(isPlace));
  const pieces = [...runs.flatMap(metalOf), ...trenchPieces(ground.trenches, obstacles)];
  const graph = routeGraph(obstacles, pieces);
  const places = runs.map((run, end) => addEnd(graph, run, end));
  const shutIn = places.flatMap((own, end) => (addWaysOut(graph, own) ? [] : [end]));
  joinAlongWalls(
    graph,
    places.map((own) => own[0]!),
  );
  addPieces(graph);
  for (const { at, things, cones } of cornersOf(obstacles)) graph.add({ ...fixed(at), things, cones });
  const count = graph.nodes.length;
  for (let n = 0; n < count; n++) addJoins(graph, n, { branches: ends.length > 2 });
  return { graph, ends: places.map((own) => own[0]!), shutIn };
}

function metalOf(run: readonly Point[], end: number): readonly TrenchPiece[] {
  return run.slice(1).map((b, i) => ({ a: run[i]!, b, factor: 0, end }));
}

function addEnd(graph: RouteGraph, run: readonly Point[], end: number): readonly number[] {
  const halves = run.slice(1).map((b, i) => between(run[i]!, b, 0.5));
  return [...run, ...halves].map((at) => graph.add({ ...fixed(at), end }));
}

/** Whether an end can be left: one of its places is clear, or has a way out. */
function addWaysOut(graph: RouteGraph, own: readonly number[]): boolean {
  const { nodes, obstacles } = graph;
  if (own.some((n) => obstacles.isClear(nodes[n]!.at))) return true;
  let isOut = false;
  for (const n of own) {
    for (const at of waysOut(nodes[n]!.at, obstacles)) {
      graph.join(n, graph.add(fixed(at)));
      isOut = true;
    }
  }
  return isOut;
}

/** Two ends in the clearance of the same buildings, outside their walls, may be joined along the wall; at one place, as they are. */
function joinAlongWalls(graph: RouteGraph, ends: readonly number[]): void {
  const { nodes, obstacles } = graph;
  const { things, thingsAt, isInside, sees } = obstacles;
  const walls = ends.map((n) => {
    const { at } = nodes[n]!;
    const near = thingsAt(at);
    const isBeside = [...near].every((t) => things[t]!.kind === 'area' && !isInside(at, t));
    return near.size > 0 && isBeside ? near : null;
  });
  ends.forEach((a, i) => {
    ends.slice(i + 1).forEach((b, j) => {
      const own = walls[i];
      if (distanceM(nodes[a]!.at, nodes[b]!.at) <= obstacles.sameM) graph.join(a, b);
      if (own == null || walls[i + 1 + j] == null) return;
      const [from, to] = [nodes[a]!.at, nodes[b]!.at];
      const isApart = [...own].some((t) => entersThing(from, to, t, obstacles));
      if (!isApart && sees(from, to, own)) graph.join(a, b);
    });
  });
}

/** Ends of trench pieces, and where they cross or meet each other. */
function addPieces(graph: RouteGraph): void {
  const { pieces } = graph;
  for (const p of pieces) if (p.end === null) for (const at of [p.a, p.b]) graph.add(fixed(at));
  pieces.forEach((p, i) => {
    for (const q of pieces.slice(i + 1)) {
      const at = crossing([p.a, p.b], [q.a, q.b]);
      if (at !== null) graph.add(fixed(at));
    }
  });
}

interface JoinOptions {
  /** Whether the route may branch, so that a way may also leave a trench straight across. */
  readonly branches: boolean;
  /** How many at most, the nearest first. */
  readonly most?: number;
}

/** Links a place to its best joining places on the trenches that it sees; gives their numbers. */
export function addJoins(
  graph: RouteGraph,
  from: number,
  { branches, most = Infinity }: JoinOptions,
): readonly number[] {
  const { at, kind } = graph.nodes[from]!;
  if (kind === 'join' || !graph.obstacles.isClear(at)) return [];
  return graph.pieces
    .flatMap((piece) =>
      bestJoins(at, piece, branches).map((place) => ({ place, end: piece.end, farM: distanceM(at, place) })),
    )
    .filter(({ place }) => graph.obstacles.sees(at, place))
    .sort((a, b) => a.farM - b.farM)
    .slice(0, most)
    .map(({ place, end }) => {
      const join = graph.add({ ...fixed(place), end, kind: 'join' });
      graph.join(from, join);
      return join;
    });
}

const fixed = (at: Point): RouteNode => ({ at, end: null, things: [], cones: [], kind: 'fixed' });
