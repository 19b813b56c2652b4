import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Tie } from '../bonding/tie.ts';
import type { Conductor, Line, Position, Stop } from '../site/site.ts';
import { middle } from '../units/interval.ts';
import { nodePlaces } from './node-places.ts';
import { nearestPair, routeWay, siteWays, type Way } from './site-ways.ts';

/** The points that a span of metal passes between two nodes, from the first to the second; null: nobody knows. */
export type WayOfTie = (tie: Tie, from: string, to: string) => readonly Position[] | null;

/**
 * Ways of spans: of a conductor along its route, else straight between the places of its ends; of a support upright; of a
 * line over its bends, at the face of the support that it runs down.
 */
export function strikeWays(run: Pick<BondingRun, 'graph' | 'site' | 'metal'>): WayOfTie {
  const places = nodePlaces(run);
  const { parts } = run.metal.index;
  const wayOf = siteWays(run.site, (id) => parts.get(id));
  const conductors = new Map(run.site.conductors.map((c) => [c.id, c]));
  const lines = new Map(run.site.lines.map((l) => [l.id, l]));
  return (tie, from, to) => {
    const line = lines.get(tie.part);
    if (line !== undefined) return lineWay(run, line, places, from, to);
    const conductor = conductors.get(tie.part);
    const [a, b] = [places.get(from), places.get(to)];
    if (conductor === undefined) return a === undefined || b === undefined ? null : [a, b];
    return conductorWay(conductor, tie, [a ?? null, b ?? null], wayOf);
  };
}

function conductorWay(
  c: Conductor,
  { span }: Tie,
  [a, b]: readonly [Position | null, Position | null],
  wayOf: (point: Conductor['from']) => Way,
): readonly Position[] | null {
  const isWhole = c.passes.length === 0 && c.splices.length === 0 && (span ?? 0) === 0;
  const route = isWhole ? routeWay(c.route) : [];
  if (route.length > 0) return route;
  if (a !== null && b !== null) return [a, b];
  // one end lands on something long: at the nearest point of it
  const landings = [c.from, ...c.passes.map((p) => p.at), c.to].map(wayOf);
  const at = span ?? 0;
  const [from, to] = [a === null ? (landings[at] ?? []) : [a], b === null ? (landings[at + 1] ?? []) : [b]];
  if (from.length === 0 || to.length === 0) return null;
  return nearestPair(from, to);
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
