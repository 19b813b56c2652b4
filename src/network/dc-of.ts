import type { BondingRun } from '../bonding/bonding-of.ts';
import { boundsToEarth, type RangedNetwork, type ResistanceBounds, type SolvedRange } from '../currents/bounds.ts';
import { flow } from '../currents/flow.ts';
import { resistancesToEarth } from '../currents/resistance.ts';
import type { SolvedNetwork } from '../currents/solve-network.ts';
import type { Electrode } from '../site/site.ts';
import type { AloneOhm } from './alone-ohm.ts';
import { type GroupNetwork, groupNetworks } from './dc-network.ts';
import { earthPoints } from './earth-points.ts';
import { type EarthPoint, type EarthRanges, earthRanges, withoutCoupling } from './earth-ranges.ts';
import { type Ground, groundOf } from './ground.ts';
import { conditionOfState, groundSoil } from './ground-soil.ts';
import { agreed, likelySolutions } from './likely-solutions.ts';
import { solveSides } from './solve-sides.ts';
import { uncoupledHigh } from './uncoupled-high.ts';

/** What the direct-current solve of a site gives, by the owner's ids. */
export interface DcRun {
  /** Each electrode alone. */
  readonly alone: ReadonlyMap<string, AloneOhm>;
  readonly earth: {
    readonly resistanceOhm: ResistanceBounds | null;
    readonly groups: readonly { readonly id: string; readonly resistanceOhm: ResistanceBounds | null }[];
    readonly ofPart: ReadonlyMap<string, ResistanceBounds>;
    /** Of a current put into the service bar. */
    readonly currentShare: ReadonlyMap<string, number>;
    readonly couplingLeftOut: readonly (readonly [string, string])[];
    /** Supports, guys and electrodes that may leak too: in for the low figures alone. */
    readonly perhaps: readonly string[];
    /** What only an unknown tie joins to the service's group (or, without one, to the largest of those that may be one): likewise. */
    readonly perhapsTied: readonly string[];
    readonly residual: number;
    readonly worstAt: string | null;
  };
}

export interface SolvedGroup {
  readonly network: GroupNetwork;
  /** See `LeakingNetwork`. */
  readonly landings: ReadonlyMap<number, string>;
  readonly points: readonly EarthPoint[];
  readonly solved: SolvedRange;
  /** At the likely figures; see `likelySolutions`. */
  readonly likely: readonly SolvedNetwork[];
  readonly leftOut: EarthRanges['leftOut'];
  readonly bounds: readonly ResistanceBounds[];
}

/**
 * Each bonded group with an electrode as a network of resistances: to remote earth from every part, low and high by all
 * resistances at their low and at their high ends, and the share of each electrode in a current put into the service bar.
 * Only bonds count: cords and shields are lifted.
 */
export function dcOf(run: BondingRun, ground: Ground = groundOfRun(run)): DcRun {
  const { graph, bonding, site } = run;
  const { alone } = ground;
  const electrodes = new Map(site.electrodes.map((e) => [e.id, e]));
  const pieces = groupNetworks(graph);
  const groups = pieces.flatMap((network) => solveGroup({ graph, site, electrodes }, network, ground) ?? []);
  const ofPart = new Map<string, ResistanceBounds>();
  for (const [part, ohm] of groups.flatMap((g) => partBounds(run, g))) ofPart.set(part, better(ofPart.get(part), ohm));
  const service = bonding.service.part;
  const home = service === null ? undefined : groups.find((g) => serviceNode(run, g, service) !== null);
  const share = home === undefined ? null : shareOf(run, home, service!);
  return {
    alone,
    earth: {
      resistanceOhm: service === null ? null : (ofPart.get(service) ?? null),
      groups: bonding.groups
        .filter((g) => g.electrodes.length > 0)
        .map((g) => ({ id: g.id, resistanceOhm: boundsAt(groups, g.electrodes[0]!) })),
      ofPart,
      currentShare: share?.shares ?? new Map(),
      couplingLeftOut: groups.flatMap((g) => g.leftOut),
      perhaps: perhapsOf(groups, ground),
      perhapsTied: groups.flatMap((g) => perhapsTied(g, service === null ? null : serviceNode(run, g, service))).sort(),
      residual: share?.residual ?? 0,
      worstAt: share?.worstAt ?? null,
    },
  };
}

/** Not the conductors without a place: the ground lists those. */
function perhapsOf(groups: readonly SolvedGroup[], { aloneOfLeaking }: Ground): readonly string[] {
  const points = groups.flatMap((g) => g.points.filter((p) => p.certain === 'perhaps' && !aloneOfLeaking.has(p.id)));
  return [...new Set(points.map((p) => p.part))].sort();
}

function perhapsTied({ points, network }: SolvedGroup, service: number | null): readonly string[] {
  const sizes = new Map<number, number>();
  for (const { bonded, certain } of points) if (certain !== 'perhaps') sizes.set(bonded, (sizes.get(bonded) ?? 0) + 1);
  const largest = [...sizes].sort(([a, of], [b, than]) => than - of || a - b)[0]?.[0];
  const home = service === null ? largest : network.bonded[service];
  const parts = points.filter((p) => p.bonded !== home && p.certain !== 'perhaps').map((p) => p.part);
  return [...new Set(parts)];
}

/** One bonded group; null where it has no electrode or its earth makes no sense even without coupling. */
export function solveGroup(
  {
    graph,
    site,
    electrodes,
  }: Pick<BondingRun, 'graph' | 'site'> & { readonly electrodes: ReadonlyMap<string, Electrode> },
  whole: GroupNetwork,
  ground: Ground,
): SolvedGroup | null {
  const found = earthPoints({ graph, site, electrodes }, whole, ground);
  if (found === null) return null;
  const { network, nodeCount, landings, points } = found;
  const coupled = earthRanges(points, ground);
  for (const { earth, leftOut, isFelt } of [coupled, withoutCoupling(coupled, points)]) {
    const ranged: RangedNetwork = { nodeCount, branches: network.branches, earth };
    const solved = solveSides(ranged);
    if (solved === null) continue;
    const likely = likelySolutions(ranged, solved);
    const highs = leftOut.length === 0 ? null : uncoupledHigh(ranged, isFelt);
    const bounds = boundsWithValue(solved, likely).map((b, i) =>
      inOrder(highs === null ? b : { ...b, high: highs[i]! }),
    );
    return { network, landings, points, solved, likely, leftOut, bounds };
  }
  return null;
}

/** Figures of three solves, a rounding or an error of the elements apart where all are known. */
function inOrder({ low, value, high }: ResistanceBounds): ResistanceBounds {
  return { low: Math.min(low, value ?? low, high), value, high: Math.max(high, value ?? high, low) };
}

/** The ground as it is in the state of a run. */
export function groundOfRun({ site, bonding }: Pick<BondingRun, 'site' | 'bonding'>): Ground {
  const state = site.states.find((s) => s.id === bonding.state);
  return groundOf(site, groundSoil(site, conditionOfState(site, state)));
}

/**
 * A tie of unknown resistance leaves the likely figure open only where it matters: where the answer with it at 0 and
 * without it differ by more than a hundredth.
 */
function boundsWithValue(solved: SolvedRange, likely: readonly SolvedNetwork[]): readonly ResistanceBounds[] {
  const bounds = boundsToEarth(solved);
  if (solved.value !== null) return bounds;
  const values = likely.map(resistancesToEarth);
  return bounds.map((b, i) => ({ ...b, value: agreed(values.map((of) => of[i] ?? null)) }));
}

/** Bounds of each part of a group, at the best of its points: the least of what any of them has. */
function partBounds(
  { graph }: BondingRun,
  { network, landings, bounds }: SolvedGroup,
): readonly (readonly [string, ResistanceBounds])[] {
  const ofPart = new Map<string, ResistanceBounds>();
  const note = (part: string, node: number) => ofPart.set(part, better(ofPart.get(part), bounds[node]!));
  network.nodes.forEach((id, node) => {
    note(graph.getNodeAttribute(id, 'part'), node);
  });
  for (const [node, part] of landings) note(part, node);
  return [...ofPart];
}

function better(held: ResistanceBounds | undefined, next: ResistanceBounds): ResistanceBounds {
  if (held === undefined) return next;
  const values = [held.value, next.value].filter((value) => value !== null);
  return {
    low: Math.min(held.low, next.low),
    high: Math.min(held.high, next.high),
    value: values.length === 0 ? null : Math.min(...values),
  };
}

/** Bounds at a node; null where it is in no group that could be solved. */
function boundsAt(groups: readonly SolvedGroup[], node: string): ResistanceBounds | null {
  for (const { network, bounds } of groups) {
    const at = network.nodes.indexOf(node);
    if (at >= 0) return bounds[at]!;
  }
  return null;
}

function serviceNode({ graph }: BondingRun, { network }: SolvedGroup, service: string): number | null {
  const at = network.nodes.findIndex((id) => graph.getNodeAttribute(id, 'part') === service);
  return at < 0 ? null : at;
}

/** Where a current put into the service bar goes, at the likely figures; a share that is not known is left out. */
function shareOf(run: BondingRun, group: SolvedGroup, service: string) {
  const node = serviceNode(run, group, service);
  const flows = node === null ? [] : group.likely.map((solution) => flow(solution, [{ node, currentA: 1 }]));
  const [first] = flows;
  if (first === undefined) return null;
  return {
    shares: sharesOf(group, group.network.bonded[node!]!, flows),
    residual: Math.max(...flows.map((f) => f.residual)),
    worstAt: first.worstNode === null ? null : (group.network.nodes[first.worstNode] ?? null),
  };
}

/** By electrode or leaking conductor of the service's group; what has several points in the soil is taken together. */
function sharesOf({ points }: SolvedGroup, bonded: number, flows: readonly ReturnType<typeof flow>[]) {
  const pointsOf = new Map<string, number[]>();
  points.forEach((point, i) => {
    if (point.bonded !== bonded || point.certain === 'perhaps') return;
    pointsOf.set(point.part, [...(pointsOf.get(point.part) ?? []), i]);
  });
  const shares = new Map<string, number>();
  for (const [part, own] of pointsOf) {
    const ofFlows = flows.map((f) => total(own.map((i) => f.earthA[i] ?? null)));
    const share = agreed(ofFlows, 'one');
    if (share !== null) shares.set(part, share);
  }
  return shares;
}

/** null where one of them is not known. */
function total(currents: readonly (number | null)[]): number | null {
  return currents.reduce((sum, current) => (sum === null || current === null ? null : sum + current), 0);
}
