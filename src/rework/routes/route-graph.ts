import { type Cone, touches } from './corners.ts';
import type { Obstacles } from './obstacles.ts';
import { distanceM, nearestShare, type Point } from './point.ts';
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
  isOpen: boolean;
  readonly pieces: readonly number[];
  readonly joined: Map<number, Link>;
  links: { readonly version: number; readonly links: readonly Link[] } | null;
}

/** Numbers of two places as one key. */
const PAIR = 2 ** 26;

/** An empty graph over the ground. */
export function routeGraph(obstacles: Obstacles, pieces: readonly TrenchPiece[]): RouteGraph {
  return new PlacesOnGround(obstacles, pieces);
}

class PlacesOnGround implements RouteGraph {
  readonly nodes: RouteNode[] = [];
  private places: Place[] = [];
  private open: number[] = [];
  private onPiece: number[][];
  private byPlace = new Map<string, number>();
  /** Whether two places see each other, once it was asked. */
  private readonly straight = new Map<number, boolean>();
  /** The same of what it is a copy of, for the places with lesser numbers than this. */
  private before: Map<number, boolean> | null = null;
  private handedOn = 0;
  private orders: { readonly version: number; readonly order: readonly number[] }[] = [];
  private version = 0;

  constructor(
    readonly obstacles: Obstacles,
    readonly pieces: readonly TrenchPiece[],
  ) {
    this.onPiece = pieces.map(() => []);
  }

  copy(): RouteGraph {
    const other = new PlacesOnGround(this.obstacles, this.pieces);
    other.nodes.push(...this.nodes);
    other.places = this.places.map((p) => ({ ...p, joined: new Map(p.joined), links: null }));
    other.open = [...this.open];
    other.onPiece = this.onPiece.map((on) => [...on]);
    other.byPlace = new Map(this.byPlace);
    // Of a copy of a copy the first is left out: it is asked anew.
    other.before = this.straight;
    other.handedOn = this.handedOn === 0 ? this.nodes.length : 0;
    return other;
  }

  add(node: RouteNode): number {
    const { nodes, places, pieces, obstacles } = this;
    const key = node.at.map((x) => Math.round(x / obstacles.sameM)).join();
    const same = this.byPlace.get(key);
    if (same !== undefined && (node.end === null || node.end === nodes[same]!.end)) {
      if (nodes[same]!.kind === 'join' && node.kind !== 'join') this.put(same, { ...node, end: nodes[same]!.end });
      return same;
    }
    const on = pieces.flatMap((p, i) => (isOnPiece(node.at, p, 10 * obstacles.toleranceM) ? [i] : []));
    const end = node.end ?? on.map((i) => pieces[i]!.end).find((e) => e !== null) ?? null;
    const number = places.push({ isOpen: false, pieces: on, joined: new Map(), links: null }) - 1;
    if (same === undefined) this.byPlace.set(key, number);
    for (const i of on) this.onPiece[i]!.push(number);
    this.put(number, { ...node, end });
    return number;
  }

  /** A place as it is from now on; what was a join may come to be more. */
  private put(number: number, node: RouteNode): void {
    this.version++;
    this.nodes[number] = node;
    const isOpen = node.kind !== 'join' && this.obstacles.isClear(node.at);
    this.places[number]!.isOpen = isOpen;
    if (isOpen) this.open.push(number);
  }

  join(a: number, b: number): void {
    if (a === b) return;
    const costM = distanceM(this.nodes[a]!.at, this.nodes[b]!.at);
    this.version++;
    this.places[a]!.joined.set(b, { to: b, costM, piece: null });
    this.places[b]!.joined.set(a, { to: a, costM, piece: null });
  }

  link(a: number, b: number): Link | null {
    if (a === b) return null;
    const [here, there] = [this.places[a]!, this.places[b]!];
    const shared = cheapest(here.pieces, there.pieces, this.pieces);
    if (shared !== null) return { to: b, costM: this.apartM(a, b) * this.pieces[shared]!.factor, piece: shared };
    const joined = here.joined.get(b);
    if (joined !== undefined) return joined;
    if (!here.isOpen || !there.isOpen || !this.runsStraight(a, b)) return null;
    return { to: b, costM: this.apartM(a, b), piece: null };
  }

  private apartM(a: number, b: number): number {
    return distanceM(this.nodes[a]!.at, this.nodes[b]!.at);
  }

  links(a: number): readonly Link[] {
    const place = this.places[a]!;
    if (place.links?.version === this.version) return place.links.links;
    const near = new Set([...place.pieces.flatMap((i) => this.besides(i, a)), ...place.joined.keys()]);
    const links: Link[] = [];
    for (const b of near) links.push(this.link(a, b)!);
    for (const b of place.isOpen ? this.open : []) {
      const link = near.has(b) ? null : this.link(a, b);
      if (link !== null) links.push(link);
    }
    place.links = { version: this.version, links };
    return links;
  }

  /** The places before and after one on a trench piece: what lies farther along it is reached by them. */
  private besides(piece: number, a: number): readonly number[] {
    const order = this.inOrder(piece);
    const at = order.indexOf(a);
    return order.slice(Math.max(0, at - 1), at + 2).filter((b) => b !== a);
  }

  private inOrder(piece: number): readonly number[] {
    const before = this.orders[piece];
    if (before?.version === this.version) return before.order;
    const { a, b } = this.pieces[piece]!;
    const found = this.onPiece[piece]!.map((n) => ({ n, share: nearestShare(this.nodes[n]!.at, a, b) }));
    const order = found.sort((p, q) => p.share - q.share || p.n - q.n).map((x) => x.n);
    this.orders[piece] = { version: this.version, order };
    return order;
  }

  private runsStraight(a: number, b: number): boolean {
    const [here, there] = [this.nodes[a]!, this.nodes[b]!];
    if (!touches(here.cones, here.at, there.at) || !touches(there.cones, there.at, here.at)) return false;
    const straight = Math.max(a, b) < this.handedOn ? this.before! : this.straight;
    const key = Math.min(a, b) * PAIR + Math.max(a, b);
    const known = straight.get(key);
    if (known !== undefined) return known;
    const found = this.obstacles.sees(here.at, there.at);
    straight.set(key, found);
    return found;
  }
}

/** The piece that both lie on and that counts least. */
function cheapest(a: readonly number[], b: readonly number[], pieces: readonly TrenchPiece[]): number | null {
  if (a.length === 0 || b.length === 0) return null;
  let best: number | null = null;
  for (const i of a) {
    if (b.includes(i) && (best === null || pieces[i]!.factor < pieces[best]!.factor)) best = i;
  }
  return best;
}
