import type { BondingRun } from '../bonding/bonding-of.ts';
import { components } from '../bonding/components.ts';
import {
  boundsToEarth,
  type RangedNetwork,
  type ResistanceBounds,
  type SolvedRange,
  solveRange,
} from '../currents/bounds.ts';
import { flow } from '../currents/flow.ts';
import type { Interval } from '../units/interval.ts';
import { type AloneOhm, aloneOhm, soilLayersOf } from './alone-ohm.ts';
import { bonds, type GroupNetwork, groupNetwork } from './dc-network.ts';
import { type EarthPoint, type EarthRanges, earthRanges, withoutCoupling } from './earth-ranges.ts';

/** What the direct-current solve of a site gives, by the owner's ids. */
export interface DcRun {
  /** Each electrode alone. */
  readonly alone: ReadonlyMap<string, AloneOhm>;
  /** Contact resistance of each joint. */
  readonly jointOhm: ReadonlyMap<string, Interval>;
  readonly earth: {
    readonly resistanceOhm: ResistanceBounds | null;
    readonly groups: readonly { readonly id: string; readonly resistanceOhm: ResistanceBounds | null }[];
    readonly ofPart: ReadonlyMap<string, ResistanceBounds>;
    /** Of a current put into the service bar. */
    readonly currentShare: ReadonlyMap<string, number>;
    readonly couplingLeftOut: readonly (readonly [string, string])[];
    readonly residual: number;
    readonly worstAt: string | null;
  };
}

interface SolvedGroup {
  readonly network: GroupNetwork;
  readonly points: readonly EarthPoint[];
  readonly solved: SolvedRange;
  readonly leftOut: EarthRanges['leftOut'];
  readonly bounds: readonly ResistanceBounds[];
}

/**
 * Each bonded group with an electrode as a network of resistances: to remote earth from every part, low and high by all
 * resistances at their low and at their high ends, and the share of each electrode in a current put into the service bar.
 * Only bonds count: cords and shields are lifted.
 */
export function dcOf(run: BondingRun): DcRun {
  const { graph, bonding, site } = run;
  const soil = soilLayersOf(site);
  const alone = new Map(site.electrodes.filter((e) => e.present !== 'no').map((e) => [e.id, aloneOhm(e, soil)]));
  const pieces = components(graph, { edge: (key) => isBond(run, key) });
  const groups = pieces.flatMap((nodes) => solveGroup(run, nodes, alone, soil) ?? []);
  const ofPart = new Map(groups.flatMap((g) => partBounds(run, g)));
  const service = bonding.service.part;
  const home = service === null ? undefined : groups.find((g) => serviceNode(run, g, service) !== null);
  const share = home === undefined ? null : shareOf(run, home, service!);
  return {
    alone,
    jointOhm: jointOhm(run),
    earth: {
      resistanceOhm: service === null ? null : (ofPart.get(service) ?? null),
      groups: bonding.groups
        .filter((g) => g.electrodes.length > 0)
        .map((g) => ({ id: g.id, resistanceOhm: ofPart.get(g.electrodes[0]!) ?? null })),
      ofPart,
      currentShare: share?.shares ?? new Map(),
      couplingLeftOut: groups.flatMap((g) => g.leftOut),
      residual: share?.residual ?? 0,
      worstAt: share?.worstAt ?? null,
    },
  };
}

function isBond({ graph }: BondingRun, key: string): boolean {
  const tie = graph.getEdgeAttributes(key);
  return tie.is === 'there' && bonds.has(tie.kind);
}

function solveGroup(
  { graph, site }: BondingRun,
  nodes: readonly string[],
  alone: DcRun['alone'],
  soil: ReturnType<typeof soilLayersOf>,
): SolvedGroup | null {
  const network = groupNetwork(graph, nodes);
  const byId = new Map(site.electrodes.map((e) => [e.id, e]));
  const taken = new Set<string>();
  const points = nodes.flatMap((id, node): EarthPoint[] => {
    const { kind, part } = graph.getNodeAttributes(id);
    const electrode = byId.get(part);
    if (kind !== 'electrode' || electrode === undefined || taken.has(part)) return [];
    taken.add(part);
    return [{ electrode, node, alone: alone.get(part)! }];
  });
  if (points.length === 0) return null;
  const coupled = earthRanges(points, soil);
  const ranges = [coupled, withoutCoupling(coupled, points)];
  for (const { earth, leftOut } of ranges) {
    const ranged: RangedNetwork = { nodeCount: nodes.length, branches: network.branches, earth };
    const solved = solveRange(ranged);
    if (solved.ok) return { network, points, solved, leftOut, bounds: boundsWithValue(ranged, solved) };
  }
  return null;
}

/** How far apart the figures with unknown ties at nothing and with them gone may lie for one figure to stand for both. */
const agreeShare = 0.01;

/**
 * A tie of unknown resistance leaves the likely figure open only where it matters: where the answer with it at 0 and
 * without it differ by more than a hundredth.
 */
function boundsWithValue(ranged: RangedNetwork, solved: SolvedRange): readonly ResistanceBounds[] {
  const bounds = boundsToEarth(solved);
  if (solved.value !== null || ranged.earth.nominalOhm === null) return bounds;
  const at = (ohm: number) => {
    const branches = ranged.branches.map((b) => ({ ...b, nominalOhm: b.nominalOhm ?? ohm }));
    const again = solveRange({ ...ranged, branches });
    return again.ok ? boundsToEarth(again) : null;
  };
  const [least, most] = [at(0), at(Number.POSITIVE_INFINITY)];
  return bounds.map((b, i) => {
    const [near, far] = [least?.[i]?.value ?? null, most?.[i]?.value ?? null];
    const agree = near !== null && far !== null && Number.isFinite(far) && far - near <= agreeShare * near;
    return { ...b, value: agree ? near : null };
  });
}

/** Bounds of each part of a group: at the node that has its id, else at its first. */
function partBounds(
  { graph }: BondingRun,
  { network, bounds }: SolvedGroup,
): readonly (readonly [string, ResistanceBounds])[] {
  const ofPart = new Map<string, ResistanceBounds>();
  network.nodes.forEach((id, i) => {
    const part = graph.getNodeAttribute(id, 'part');
    if (id === part || !ofPart.has(part)) ofPart.set(part, bounds[i]!);
  });
  return [...ofPart];
}

function serviceNode({ graph }: BondingRun, { network }: SolvedGroup, service: string): number | null {
  const at = network.nodes.findIndex((id) => graph.getNodeAttribute(id, 'part') === service);
  return at < 0 ? null : at;
}

/** Where a current put into the service bar goes, at the likely figures; null where those are not all known. */
function shareOf(run: BondingRun, group: SolvedGroup, service: string) {
  const { value } = group.solved;
  const node = serviceNode(run, group, service);
  if (value === null || node === null) return null;
  const flowed = flow(value, [{ node, currentA: 1 }]);
  const shares = group.points.flatMap(({ electrode }, i) => {
    const share = flowed.earthA[i];
    return share == null ? [] : [[electrode.id, share] as const];
  });
  return {
    shares: new Map(shares),
    residual: flowed.residual,
    worstAt: flowed.worstNode === null ? null : (group.network.nodes[flowed.worstNode] ?? null),
  };
}

/** Of each joint, the range of its contact with what it is on. */
function jointOhm({ graph }: BondingRun): ReadonlyMap<string, Interval> {
  const found = new Map<string, Interval>();
  graph.forEachEdge((_key, tie, a, b) => {
    if (tie.body !== 'contact' || tie.resistanceOhm === null) return;
    for (const node of [a, b]) {
      if (graph.getNodeAttribute(node, 'kind') === 'joint' && !found.has(node)) found.set(node, tie.resistanceOhm);
    }
  });
  return found;
}
