import type { BondingRun } from '../bonding/bonding-of.ts';
import { positionsOf } from '../site/positions-of.ts';
import type { Position, Support } from '../site/site.ts';
import { type Interval, middle } from '../units/interval.ts';

/**
 * Where each node of the graph is, metres east, north and up of the site's origin: a part's own place (on a support at the
 * height of its point), a rod at its top; joints, ends and strands at what they touch. Nodes without a place are left out.
 */
export function nodePlaces({ graph, site, metal }: Pick<BondingRun, 'graph' | 'site' | 'metal'>) {
  const { parts } = metal.index;
  const placeOf = positionsOf(site, (id) => parts.get(id)).of;
  const supports = new Map(site.supports.map((s) => [s.id, s]));
  const places = new Map<string, Position>();
  graph.forEachNode((node, { kind, part }) => {
    const place =
      kind === 'support'
        ? onSupport(supports.get(part), likely(metal.heights.get(node) ?? null), placeOf(part))
        : kind === 'guy'
          ? anchorPlace(node, supports.get(part), placeOf)
          : ownPlace(kind, part, placeOf, site);
    if (place !== null) places.set(node, place);
  });
  spread({ graph }, places);
  return places as ReadonlyMap<string, Position>;
}

/** Both sides of a turnbuckle lie at the anchor. */
function anchorPlace(
  node: string,
  support: Support | undefined,
  placeOf: (id: string) => Position | null,
): Position | null {
  const anchor = support?.guys.find(({ id }) => id === node.split('@')[0])?.anchor ?? null;
  return typeof anchor === 'string' ? placeOf(anchor.split('@')[0]!) : anchor;
}

function onSupport(support: Support | undefined, heightM: number | null, foot: Position | null): Position | null {
  if (support === undefined || heightM === null || foot === null) return null;
  return [foot[0], foot[1], foot[2] + heightM];
}

/** Kinds of node that are the part itself; what lies between parts has the place of what it touches. */
const bodies: ReadonlySet<string> = new Set([
  'electrode',
  'bar',
  'antenna',
  'arrester',
  'case',
  'landing',
  'metalwork',
]);

function ownPlace(
  kind: string,
  part: string,
  placeOf: (id: string) => Position | null,
  site: BondingRun['site'],
): Position | null {
  if (!bodies.has(kind)) return null;
  const electrode = kind === 'electrode' ? site.electrodes.find((e) => e.id === part) : undefined;
  if (electrode !== undefined && electrode.route !== null) return null;
  const place = placeOf(part);
  if (place === null) return null;
  const carrier = carrierHeight(part, site);
  if (electrode === undefined) return carrier === null ? place : [place[0], place[1], place[2] + carrier];
  return [place[0], place[1], -(likely(electrode.topM) ?? 0)];
}

/** Metres above a support's foot of what hangs on it and has no place of its own. */
function carrierHeight(part: string, { antennas, bars, arresters, equipment, supports }: BondingRun['site']) {
  const owned = [...antennas, ...bars, ...arresters, ...equipment].find(({ id }) => id === part);
  if (owned === undefined || owned.position !== null || owned.on === null) return null;
  const support = supports.find(({ id }) => id === owned.on!.part);
  if (support === undefined) return null;
  if (owned.on.mark === 'top') return likely(support.heightM);
  return likely(owned.on.atM);
}

function likely(figure: Interval | null): number | null {
  return figure === null ? null : middle(figure);
}

/** To all that touches what has a place, nearest first. */
function spread({ graph }: Pick<BondingRun, 'graph'>, places: Map<string, Position>): void {
  let front = [...places.keys()].sort();
  while (front.length > 0) {
    const next: string[] = [];
    for (const node of front) {
      graph.forEachEdge(node, (_key, { body, lengthM }, a, b) => {
        const other = a === node ? b : a;
        if (body !== 'contact' || lengthM?.high !== 0 || places.has(other)) return;
        places.set(other, places.get(node)!);
        next.push(other);
      });
    }
    front = next.sort();
  }
}
