import { type Cone, touches } from './corners.ts';
import type { Obstacles } from './obstacles.ts';
import { distanceM, type Point } from './point.ts';
import { isOnPiece, type TrenchPiece } from './trench-pieces.ts';

/** A place that a route may begin, bend, branch or end at. */
export interface RouteNode {
  readonly at: Point;
  /** Of which end of the route it is, or on whose metal it lies; null: of none. */
  readonly end: number | null;
  /** Things that it is a corner of; [] for what is none. */
  readonly things: readonly number[];
  readonly cones: readonly Cone[];
  /** Corner and end: fixed. Junction: put there to branch at. Join: on a trench, linked along it and to what it was made for. */
  readonly kind: 'fixed' | 'junction' | 'join';
}

export interface Link {
  readonly to: number;
  /** Length times what a metre counts here. */
  readonly costM: number;
  /** Trench piece that it runs along; null for new ground. */
  readonly piece: number | null;
}

/** Places and the straight pieces between them that keep all clearances; links are worked out when they are asked for. */
export interface RouteGraph {
  readonly nodes: readonly RouteNode[];
  readonly pieces: readonly TrenchPiece[];
  readonly obstacles: Obstacles;
  /** Adds a place and gives its number; one that is nobody's end and lies where another does is that other. */
  readonly add: (node: RouteNode) => number;
  /** A straight piece that is a link whatever lies there: the way out from a wall, the way from a place to its join. */
  readonly join: (a: number, b: number) => void;
  readonly links: (node: number) => readonly Link[];
  /** The same places and links; what is added to it is not added here. */
  readonly copy: () => RouteGraph;
  /** The link between two places; null where there is none. */
  readonly link: (a: number, b: number) => Link | null;
}

/** What the graph knows of a place. */
interface Place {
  node: RouteNode;
  isOpen: boolean;
  readonly pieces: readonly number[];
  readonly joined: Map<number, Link>;
  links: { readonly version: number; readonly links: readonly Link[] } | null;
}

/** Numbers of two places as one key. */
const PAIR = 2 ** 26;

/** What a graph holds, as a copy begins with it. */
interface Held {
  readonly places: readonly Place[];
  readonly open: readonly number[];
  readonly onPiece: readonly (readonly number[])[];
  readonly byPlace: ReadonlyMap<string, number>;
  readonly straight: ReadonlyMap<number, boolean>;
}

/** An empty graph over the ground. */
export function routeGraph(obstacles: Obstacles, pieces: readonly TrenchPiece[]): RouteGraph {
  const nothing = { places: [], open: [], onPiece: pieces.map(() => []), byPlace: new Map(), straight: new Map() };
  return graphWith(obstacles, pieces, nothing);
}

function graphWith(obstacles: Obstacles, pieces: readonly TrenchPiece[], held: Held): RouteGraph {
  const places: Place[] = held.places.map((p) => ({ ...p, joined: new Map(p.joined), links: null }));
  const nodes: RouteNode[] = places.map((p) => p.node);
  const open = [...held.open];
  const onPiece = held.onPiece.map((on) => [...on]);
  const byPlace = new Map(held.byPlace);
  const straight = new Map(held.straight);
  let version = 0;

  const isStraight = (a: number, b: number): boolean => {
    const key = Math.min(a, b) * PAIR + Math.max(a, b);
    const before = straight.get(key);
    if (before !== undefined) return before;
    const found = runsStraight(nodes[a]!, nodes[b]!, obstacles);
    straight.set(key, found);
    return found;
  };
  const link = (a: number, b: number): Link | null => {
    if (a === b) return null;
    const [here, there] = [places[a]!, places[b]!];
    const shared = cheapest(here.pieces, there.pieces, pieces);
    const lengthM = distanceM(here.node.at, there.node.at);
    if (shared !== null) return { to: b, costM: lengthM * pieces[shared]!.factor, piece: shared };
    const joined = here.joined.get(b);
    if (joined !== undefined) return joined;
    return here.isOpen && there.isOpen && isStraight(a, b) ? { to: b, costM: lengthM, piece: null } : null;
  };
  const links = (a: number): readonly Link[] => {
    const place = places[a]!;
    if (place.links?.version !== version) place.links = { version, links: linksOf(a, place) };
    return place.links.links;
  };
  const linksOf = (a: number, { isOpen, pieces: on, joined }: Place): readonly Link[] => {
    const near = new Set([...(isOpen ? open : []), ...on.flatMap((i) => onPiece[i]!), ...joined.keys()]);
    return [...near].flatMap((b) => link(a, b) ?? []);
  };
  const setOpen = (number: number, node: RouteNode): void => {
    nodes[number] = node;
    places[number]!.node = node;
    places[number]!.isOpen = node.kind !== 'join' && obstacles.isClear(node.at);
    if (places[number]!.isOpen) open.push(number);
  };
  const add = (node: RouteNode): number => {
    const key = node.at.map((x) => Math.round(x / obstacles.sameM)).join();
    const same = byPlace.get(key);
    version++;
    if (same !== undefined && (node.end === null || node.end === nodes[same]!.end)) {
      if (nodes[same]!.kind === 'join' && node.kind !== 'join') setOpen(same, { ...node, end: nodes[same]!.end });
      return same;
    }
    const on = pieces.flatMap((p, i) => (isOnPiece(node.at, p, 10 * obstacles.toleranceM) ? [i] : []));
    const end = node.end ?? on.map((i) => pieces[i]!.end).find((e) => e !== null) ?? null;
    const number = places.push({ node, isOpen: false, pieces: on, joined: new Map(), links: null }) - 1;
    if (same === undefined) byPlace.set(key, number);
    for (const i of on) onPiece[i]!.push(number);
    setOpen(number, { ...node, end });
    return number;
  };
  const join = (a: number, b: number): void => {
    if (a === b) return;
    const costM = distanceM(nodes[a]!.at, nodes[b]!.at);
    version++;
    places[a]!.joined.set(b, { to: b, costM, piece: null });
    places[b]!.joined.set(a, { to: a, costM, piece: null });
  };
  const copy = () => graphWith(obstacles, pieces, { places, open, onPiece, byPlace, straight });
  return { nodes, pieces, obstacles, add, join, links, link, copy };
}

/** The piece that both lie on and that counts least. */
function cheapest(a: readonly number[], b: readonly number[], pieces: readonly TrenchPiece[]): number | null {
  let best: number | null = null;
  for (const i of a) {
    if (b.includes(i) && (best === null || pieces[i]!.factor < pieces[best]!.factor)) best = i;
  }
  return best;
}

function runsStraight(a: RouteNode, b: RouteNode, { sees }: Obstacles): boolean {
  return touches(a.cones, a.at, b.at) && touches(b.cones, b.at, a.at) && sees(a.at, b.at);
}
