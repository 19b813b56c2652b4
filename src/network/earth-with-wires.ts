import { applyState } from '../bonding/apply-state.ts';
import { isBond } from '../bonding/bond-choice.ts';
import type { BondingRun } from '../bonding/bonding-of.ts';
import { buildGraph } from '../bonding/build-graph.ts';
import type { BondingGraph } from '../bonding/graph-builder.ts';
import { siteIndex } from '../bonding/site-index.ts';
import { type RangedNetwork, solveLikely } from '../currents/bounds.ts';
import { flow } from '../currents/flow.ts';
import { resistancesToEarth } from '../currents/resistance.ts';
import type { SolvedNetwork } from '../currents/solve-network.ts';
import { withBranches } from '../currents/with-branches.ts';
import type { Site } from '../site/site.ts';
import { groupNetworks, rangeOf } from './dc-network.ts';
import { earthPoints } from './earth-points.ts';
import { earthRanges } from './earth-ranges.ts';
import type { Ground } from './ground.ts';
import type { LeakingNetwork } from './leaking-network.ts';

/** A new conductor between two nodes that were there: its metal and its joints in a row. */
interface Chain {
  readonly from: string;
  readonly to: string;
  readonly ohm: number;
}

/**
 * Likely resistance to earth at the service once conductors are added to a site, by an update of the solved network: one
 * solve for each group that they join, and for each conductor one row of a small system, instead of the whole site anew.
 * null: it cannot be had this way (the conductors lie bare in the soil, end in nothing that was there, are of unknown
 * resistance, or something else was changed too) or is not known at all.
 */
export function earthOhmWithWires(run: BondingRun, ground: Ground, more: Site): number | null {
  const service = run.bonding.service.part;
  const chains = service === null ? null : chainsOf(run, more);
  if (service === null || chains === null) return null;
  const joined = joinedGroups(run, ground, service, chains);
  if (joined === null) return null;
  const { solved, nodeOf, used } = joined;
  const nodes = [...nodeOf].filter(([id]) => run.graph.getNodeAttribute(id, 'part') === service).map(([, n]) => n);
  if (nodes.length === 0) return null;
  const branches = used.map((c) => ({ from: nodeOf.get(c.from)!, to: nodeOf.get(c.to)!, resistanceOhm: c.ohm }));
  const own = resistancesToEarth(solved);
  const transfer = branches.map(({ from, to }) => {
    const potentials = flow(solved, [
      { node: from, currentA: 1 },
      { node: to, currentA: -1 },
    ]).potentialV;
    return (node: number) => potentials[node] ?? Number.NaN;
  });
  const ohms = nodes.map((node) => withBranches(own[node] ?? Number.NaN, node, branches, transfer));
  const least = Math.min(...ohms);
  return Number.isFinite(least) ? least : null;
}

/** The new conductors as resistances between old nodes; null where anything else differs. */
function chainsOf(run: BondingRun, more: Site): readonly Chain[] | null {
  const state = run.bonding.state === 'as typed' ? null : run.bonding.state;
  const applied = applyState(more, state);
  const had = new Set(run.site.conductors.map((c) => c.id));
  const added = applied.site.conductors.filter((c) => !had.has(c.id));
  const inSoil = added.some((c) => c.buriedM !== null && c.buriedM !== 'no');
  if (inSoil || groundSays(run.site, had) !== groundSays(applied.site, had)) return null;
  const { graph } = buildGraph(siteIndex(applied.site), applied.openings);
  const isNew = (id: string) => !run.graph.hasNode(id);
  const newNodes = graph.nodes().filter(isNew);
  const ids = new Set(added.map((c) => c.id));
  const newEdges = graph
    .edges()
    .filter((e) => graph.extremities(e).some(isNew) || ids.has(graph.getEdgeAttribute(e, 'part')));
  const isOnlyMore =
    graph.order === run.graph.order + newNodes.length && graph.size === run.graph.size + newEdges.length;
  return isOnlyMore ? allOrNone(added.map(({ id }) => chainOf(graph, newEdges, id, isNew))) : null;
}

/** All that has to do with the soil and with old metal, as text, but where it stands in the file. */
function groundSays({ soil, electrodes, supports, metalwork, conductors }: Site, had: ReadonlySet<string>): string {
  const old = conductors.filter((c) => had.has(c.id));
  const said = [soil, electrodes, supports, metalwork, old];
  return JSON.stringify(said, (key, value) => (key === 'source' ? undefined : value));
}

function allOrNone<T>(items: readonly (T | null)[]): readonly T[] | null {
  return items.some((item) => item === null) ? null : (items as readonly T[]);
}

/** A conductor from one old node to another; null where it branches, ends, or has a resistance that nobody knows. */
function chainOf(
  graph: BondingGraph,
  edges: readonly string[],
  id: string,
  isNew: (node: string) => boolean,
): Chain | null {
  const own = edgesOf(graph, edges, id, isNew);
  const nodes = new Set(own.flatMap((e) => graph.extremities(e)));
  const ends = [...nodes].filter((node) => !isNew(node));
  if (ends.length !== 2 || own.length !== nodes.size - 1) return null;
  const ohms = allOrNone(
    own.map((edge) => {
      const tie = graph.getEdgeAttributes(edge);
      const atJoint = graph.extremities(edge).some((node) => graph.getNodeAttribute(node, 'kind') === 'joint');
      return tie.is === 'there' && isBond(tie) ? rangeOf(tie, atJoint).nominalOhm : null;
    }),
  );
  return ohms === null ? null : { from: ends[0]!, to: ends[1]!, ohm: ohms.reduce((sum, ohm) => sum + ohm, 0) };
}

/** The spans of a conductor, and what hangs on them by new nodes: its joints. */
function edgesOf(graph: BondingGraph, edges: readonly string[], id: string, isNew: (node: string) => boolean) {
  const own = new Set(edges.filter((e) => graph.getEdgeAttribute(e, 'part') === id));
  for (let before = 0; before < own.size; ) {
    before = own.size;
    const nodes = new Set([...own].flatMap((e) => graph.extremities(e)).filter(isNew));
    for (const e of edges) if (graph.extremities(e).some((node) => nodes.has(node))) own.add(e);
  }
  return [...own];
}

interface Joined {
  readonly solved: SolvedNetwork;
  readonly nodeOf: ReadonlyMap<string, number>;
  /** Conductors between what is joined. */
  readonly used: readonly Chain[];
}

/** The service's group and all that the new conductors join to it, in one network but not yet joined. */
function joinedGroups(run: BondingRun, ground: Ground, service: string, chains: readonly Chain[]): Joined | null {
  const electrodes = new Map(run.site.electrodes.map((e) => [e.id, e]));
  const groups = groupNetworks(run.graph);
  const at = new Map(groups.flatMap((g, i) => g.nodes.map((id) => [id, i] as const)));
  const home = at.get(service);
  if (home === undefined) return null;
  const reached = new Set([home]);
  const ends = (c: Chain) => [at.get(c.from), at.get(c.to)] as const;
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const c of chains) if (ends(c).some((g) => reached.has(g!))) for (const g of ends(c)) reached.add(g!);
  }
  const parts = [...reached].map((g) => ({ g, leaking: earthPoints({ ...run, electrodes }, groups[g]!, ground) }));
  // what leads to no electrode changes nothing, unless it is a way between two that do
  const without = new Set(parts.filter((p) => p.leaking === null).map((p) => p.g));
  if (without.has(home)) return null;
  if ([...without].some((g) => chains.filter((c) => ends(c).includes(g)).length > 1)) return null;
  const used = chains.filter((c) => ends(c).every((g) => reached.has(g!) && !without.has(g!)));
  const { ranged, nodeOf } = sideBySide(
    parts.flatMap((p) => p.leaking ?? []),
    ground,
  );
  const solved = ranged.branches.every((b) => b.nominalOhm !== null)
    ? solveLikely(ranged, Number.POSITIVE_INFINITY)
    : null;
  return solved?.ok ? { solved, nodeOf, used } : null;
}

function sideBySide(groups: readonly LeakingNetwork[], ground: Ground) {
  const nodeOf = new Map<string, number>();
  const branches: RangedNetwork['branches'][number][] = [];
  const points: LeakingNetwork['points'][number][] = [];
  let nodeCount = 0;
  for (const [number, { network, nodeCount: count, points: own }] of groups.entries()) {
    const first = nodeCount;
    for (const [i, id] of network.nodes.entries()) nodeOf.set(id, first + i);
    branches.push(...network.branches.map((b) => ({ ...b, from: b.from + first, to: b.to + first })));
    // numbers of bonded pieces are unique over the site; groups that the new wires join count as one
    points.push(...own.map((p) => ({ ...p, node: p.node + first, bonded: p.bonded * groups.length + number })));
    nodeCount += count;
  }
  return { ranged: { nodeCount, branches, earth: earthRanges(points, ground).earth }, nodeOf };
}
