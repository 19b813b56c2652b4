import { applyState } from '../bonding/apply-state.ts';
import { askedNodes } from '../bonding/asked-nodes.ts';
import { buildGraph } from '../bonding/build-graph.ts';
import type { BondingGraph } from '../bonding/graph-builder.ts';
import { siteIndex } from '../bonding/site-index.ts';
import {
  boundsBetween,
  type RangedNetwork,
  type ResistanceBounds,
  type SolvedRange,
  solveRange,
} from '../currents/bounds.ts';
import { flow } from '../currents/flow.ts';
import type { SolvedNetwork } from '../currents/solve-network.ts';
import type { PointRef, Site } from '../site/site.ts';
import { type GroupNetwork, groupNetworks } from './dc-network.ts';
import { solveGroup } from './dc-of.ts';
import { type Ground, groundOf } from './ground.ts';
import { conditionOfState, groundSoil } from './ground-soil.ts';
import { agreed, likelySolutions } from './likely-solutions.ts';

/** What an instrument would read between two points of one bonded group, lines lifted, and where a current would go. */
export interface DcBetween {
  /** By all ways together, through metal and soil. */
  readonly betweenOhm: ResistanceBounds;
  /** Each to remote earth; null where their group has no electrode. */
  readonly fromEarthOhm: ResistanceBounds | null;
  readonly toEarthOhm: ResistanceBounds | null;
  /** Share of a current put in at the first point that each conductor, joint and electrode carries, where known; by id. */
  readonly shares: readonly { readonly part: string; readonly share: number }[];
  /** `to the other point` where there is no electrode for the current to leave by. */
  readonly leaves: 'by the electrodes' | 'at the other point';
  readonly residual: number;
  readonly worstAt: string | null;
}

interface Solved {
  readonly network: GroupNetwork;
  readonly solved: SolvedRange;
  readonly likely: readonly SolvedNetwork[];
  readonly bounds: readonly ResistanceBounds[] | null;
  /** Which electrode each point of the earth part is of; '' for what is none. */
  readonly electrodes: readonly string[];
}

/** Null where the two points do not hang together by bonds that are known to be there, or are one piece of metal. */
export function dcBetween(site: Site, stateId: string | null, from: PointRef, to: PointRef): DcBetween | null {
  const state = applyState(site, stateId);
  const { graph, ...metal } = buildGraph(siteIndex(state.site), state.openings, [from, to]);
  const [a, b] = [from, to].map((point) => askedNodes({ graph, ...metal }, point));
  if (a?.is !== 'found' || b?.is !== 'found') return null;
  const soil = groundSoil(
    state.site,
    conditionOfState(
      state.site,
      site.states.find((s) => s.id === stateId),
    ),
  );
  const run = { graph, site: state.site, ground: groundOf(state.site, soil) };
  for (const network of groupNetworks(graph)) {
    const [start, end] = [a, b].map(({ nodes: ids }) => ids.find((id) => network.indexOf.has(id)));
    if (start === undefined || end === undefined) continue;
    const isBonded = network.bonded[network.indexOf.get(start)!] === network.bonded[network.indexOf.get(end)!];
    return start === end || !isBonded ? null : between(solvedPiece(run, network), start, end);
  }
  return null;
}

function solvedPiece(
  run: { readonly graph: BondingGraph; readonly site: Site; readonly ground: Ground },
  network: GroupNetwork,
): Solved {
  const electrodes = new Map(run.site.electrodes.map((e) => [e.id, e]));
  const group = solveGroup({ graph: run.graph, site: run.site, electrodes }, network, run.ground);
  if (group !== null)
    return { ...group, electrodes: group.points.map(({ part }) => (electrodes.has(part) ? part : '')) };
  const earth = { nodes: [], lowOhm: [], highOhm: [], nominalOhm: [] };
  const ranged: RangedNetwork = { nodeCount: network.nodes.length, branches: network.branches, earth };
  const solved = solveRange(ranged);
  if (!solved.ok) throw new Error('a network without earth was refused');
  return { network, solved, likely: likelySolutions(ranged, solved), bounds: null, electrodes: [] };
}

function between(piece: Solved, start: string, end: string): DcBetween {
  const { network, solved, likely, bounds } = piece;
  const [from, to] = [network.indexOf.get(start)!, network.indexOf.get(end)!];
  const injections = [{ node: from, currentA: 1 }, ...(bounds === null ? [{ node: to, currentA: -1 }] : [])];
  const flows = likely.map((solution) => flow(solution, injections));
  const worst = flows[0]?.worstNode ?? null;
  return {
    betweenOhm: boundsBetween(solved, from, to),
    fromEarthOhm: bounds?.[from] ?? null,
    toEarthOhm: bounds?.[to] ?? null,
    shares: sharesOf(piece, flows),
    leaves: bounds === null ? 'at the other point' : 'by the electrodes',
    residual: Math.max(0, ...flows.map((f) => f.residual)),
    worstAt: worst === null ? null : (network.nodes[worst] ?? null),
  };
}

/** Of a conductor of several spans the one that carries most; of an electrode what it gives to the soil. */
function sharesOf({ network, electrodes }: Piece, flows: readonly ReturnType<typeof flow>[]) {
  const isElectrode = new Set(electrodes.filter((id) => id !== ''));
  const shares = new Map<string, number>();
  const note = (part: string, carried: readonly (number | null)[]) => {
    const share = agreed(
      carried.map((current) => (current === null ? null : Math.abs(current))),
      'one',
    );
    if (share !== null) shares.set(part, Math.max(shares.get(part) ?? 0, share));
  };
  for (const [i, part] of network.parts.entries()) {
    if (isElectrode.has(part)) continue;
    note(
      part,
      flows.map((f) => f.branchA[i] ?? null),
    );
  }
  for (const electrode of isElectrode) {
    const own = electrodes.flatMap((id, i) => (id === electrode ? [i] : []));
    note(
      electrode,
      flows.map((f) => total(own.map((i) => f.earthA[i] ?? null))),
    );
  }
  return [...shares].map(([part, share]) => ({ part, share })).sort((x, y) => (x.part < y.part ? -1 : 1));
}

/** null where one of them is not known. */
function total(currents: readonly (number | null)[]): number | null {
  return currents.reduce((sum, current) => (sum === null || current === null ? null : sum + current), 0);
}

type Piece = Pick<Solved, 'network' | 'electrodes'>;
