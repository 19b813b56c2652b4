import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Tie } from '../bonding/tie.ts';
import type { Conductor, Line, Position, Stop } from '../site/site.ts';
import { middle } from '../units/interval.ts';
import { nodePlaces } from './node-places.ts';
import { nearestPair, routeWay, siteWays, type Way } from './site-ways.ts';

/** The points that a span of metal passes between two nodes, from the first to the second; null: nobody knows. */
export type WayOfTie = (tie: Tie, from: string, to: string) => readonly Position[] | null;

/**
 * Ways of spans: of a conductor along its route, else straight between the places of its ends and clamps, parted by its splices;
 * of a support upright; of a line over its bends, at the face of the support that it runs down.
 */
export function strikeWays(run: Pick<BondingRun, 'graph' | 'site' | 'metal'>): WayOfTie {
  const places = nodePlaces(run);
  const { parts } = run.metal.index;
  const wayOf = siteWays(run.site, (id) => parts.get(id));
  const conductors = new Map(run.site.conductors.map((c) => [c.id, c]));
  const lines = new Map(run.site.lines.map((l) => [l.id, l]));
  const spans = conductorSpans(run, conductors);
  return (tie, from, to) => {
    const line = lines.get(tie.part);
    if (line !== undefined) return lineWay(run, line, places, from, to);
    const conductor = conductors.get(tie.part);
    const [a, b] = [places.get(from), places.get(to)];
    if (conductor === undefined) return a === undefined || b === undefined ? null : [a, b];
    return conductorWay(conductor, tie.span ?? 0, spans.get(conductor.id) ?? [], { places, wayOf });
  };
}

interface Span {
  readonly from: string;
  readonly to: string;
  readonly lengthM: number | null;
}

/** Spans of each conductor, in their order. */
function conductorSpans({ graph }: Pick<BondingRun, 'graph'>, conductors: ReadonlyMap<string, Conductor>) {
  const spans = new Map<string, Span[]>();
  graph.forEachEdge((_key, { part, body, span, lengthM }, from, to) => {
    if (body !== 'span' || span === undefined || !conductors.has(part)) return;
    const own = spans.get(part) ?? [];
    own[span] = { from, to, lengthM: lengthM === null ? null : middle(lengthM) };
    spans.set(part, own);
  });
  return spans as ReadonlyMap<string, readonly Span[]>;
}

interface Known {
  readonly places: ReadonlyMap<string, Position>;
  readonly wayOf: (point: Conductor['from']) => Way;
}

/** A chain is its start, the wires that land on it, its clamps, its splices, its end; between clamps it is one run. */
function conductorWay(c: Conductor, span: number, spans: readonly Span[], known: Known): readonly Position[] | null {
  const taps = spans.length - 1 - c.passes.length - c.splices.length;
  if (taps < 0 || (taps > 0 && c.passes.length > 0)) return null;
  const starts = [0, ...c.passes.map((_, i) => i + 1)];
  const run = starts.findLastIndex((start) => start <= span);
  const own = spans.slice(starts[run], starts[run + 1]);
  const way = routeBetween(c, run, known) ?? runWay(c, run, own, known);
  if (way === null || own.length === 1) return way;
  return stretchOf(way, own, span - starts[run]!, taps > 0);
}

/** Of a route, what lies between two clamps: parted where it comes nearest to each; null: no route, or no telling. */
function routeBetween(c: Conductor, run: number, { wayOf }: Known): readonly Position[] | null {
  const route = routeWay(c.route);
  if (route.length === 0) return null;
  if (c.passes.length === 0) return route;
  const clamps = c.passes.map(({ at }) => {
    const place = wayOf(at);
    return place.length === 0 ? null : alongM(route, nearestPair(route, place)[0]);
  });
  const marks = [0, ...clamps, wayLengthM(route)];
  const isInOrder = marks.every((mark, i) => mark !== null && (i === 0 || mark > marks[i - 1]!));
  return isInOrder ? wayBetween(route, marks[run]!, marks[run + 1]!) : null;
}

/** How far along a way a point of it lies, metres. */
function alongM(way: readonly Position[], point: Position): number {
  let [least, bestM, doneM] = [Number.POSITIVE_INFINITY, 0, 0];
  for (const [i, end] of way.slice(1).entries()) {
    const start = way[i]!;
    const lengthM = wayLengthM([start, end]);
    const toM = Math.hypot(point[0] - start[0], point[1] - start[1]);
    const levelM = Math.hypot(end[0] - start[0], end[1] - start[1]);
    const offM = toM + Math.hypot(point[0] - end[0], point[1] - end[1]) - levelM;
    if (offM < least) [least, bestM] = [offM, doneM + (levelM === 0 ? 0 : (toM / levelM) * lengthM)];
    doneM += lengthM;
  }
  return bestM;
}

function runWay(c: Conductor, run: number, own: readonly Span[], { places, wayOf }: Known): readonly Position[] | null {
  const [a, b] = [places.get(own[0]?.from ?? ''), places.get(own.at(-1)?.to ?? '')];
  if (a !== undefined && b !== undefined) return [a, b];
  // one end lands on something long: at the nearest point of it
  const landings = [c.from, ...c.passes.map((p) => p.at), c.to].map(wayOf);
  const [from, to] = [a === undefined ? landings[run]! : [a], b === undefined ? landings[run + 1]! : [b]];
  return from.length === 0 || to.length === 0 ? null : nearestPair(from, to);
}

/** Its share of the way: by the lengths of the spans, or evenly where they are splices' and nobody knows them. */
function stretchOf(way: readonly Position[], own: readonly Span[], at: number, isTapped: boolean) {
  const isKnown = own.every(({ lengthM }) => lengthM !== null && lengthM > 0);
  if (!isKnown && isTapped) return null;
  const shares = own.map(({ lengthM }) => (isKnown ? lengthM! : 1));
  const sumTo = (end: number) => shares.slice(0, end).reduce((sum, share) => sum + share, 0);
  const wholeM = wayLengthM(way);
  const share = (end: number) => (sumTo(end) / sumTo(own.length)) * wholeM;
  return wayBetween(way, share(at), share(at + 1));
}

/** From so many metres along a way to so many. */
function wayBetween(way: readonly Position[], fromM: number, toM: number): readonly Position[] {
  const kept: Position[] = [];
  let doneM = 0;
  for (const [i, end] of way.slice(1).entries()) {
    const start = way[i]!;
    const lengthM = wayLengthM([start, end]);
    const [a, b] = [Math.max(0, fromM - doneM), Math.min(lengthM, toM - doneM)];
    if (lengthM > 0 && a < b) {
      if (kept.length === 0) kept.push(pointOn(start, end, a / lengthM));
      kept.push(pointOn(start, end, b / lengthM));
    }
    doneM += lengthM;
  }
  return kept;
}

function pointOn(start: Position, end: Position, share: number): Position {
  const at = (k: 0 | 1 | 2) => start[k] + share * (end[k] - start[k]);
  return [at(0), at(1), at(2)];
}

/** Metres along the points of a way. */
export function wayLengthM(way: readonly Position[]): number {
  return way
    .slice(1)
    .reduce((sum, p, i) => sum + Math.hypot(p[0] - way[i]![0], p[1] - way[i]![1], p[2] - way[i]![2]), 0);
}

/** How far from the axis of a support a line runs down its face, metres. Ours: half the face of a small lattice. */
const faceM = 0.15;

function lineWay(
  { site, metal }: Pick<BondingRun, 'site' | 'metal'>,
  line: Line,
  places: ReadonlyMap<string, Position>,
  from: string,
  to: string,
): readonly Position[] | null {
  const [a, b] = [places.get(from), places.get(to)];
  const [first, last] = [stopIndex(from), stopIndex(to)];
  if (a === undefined || b === undefined || first === null || last === null) return null;
  const between = line.path.slice(Math.min(first, last) + 1, Math.max(first, last));
  const bends = between.flatMap((stop) => bendPlace(stop, site, metal) ?? []);
  const way = [a, ...(first <= last ? bends : bends.reverse()), b];
  const isUpright = way.every((p) => Math.hypot(p[0] - a[0], p[1] - a[1]) < faceM);
  return isUpright ? way.map(([east, north, up]): Position => [east + faceM, north, up]) : way;
}

/** Stops are numbered from 1 in a node's name, `line.shield.3` or `line.shield.3+`. */
function stopIndex(node: string): number | null {
  const found = /\.(\d+)[-+]?$/.exec(node);
  return found === null ? null : Number(found[1]) - 1;
}

function bendPlace(stop: Stop, site: BondingRun['site'], { index }: BondingRun['metal']): Position[] | null {
  if (stop.is !== 'bend') return null;
  if (stop.position !== null) return [stop.position];
  const support = site.supports.find(({ id }) => id === stop.at?.part);
  const place = support?.position ?? index.parts.get(stop.at?.part ?? '')?.position ?? null;
  if (place === null) return null;
  const heightM = stop.at?.atM == null ? null : middle(stop.at.atM);
  return heightM === null ? [place] : [[place[0], place[1], place[2] + heightM]];
}
