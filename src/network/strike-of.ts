import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Position } from '../site/site.ts';
import { inductancesWith } from '../surge/inductance-matrix.ts';
import type { StraightPiece } from '../surge/straight-piece.ts';
import { type SurgeModes, surgeModes } from '../surge/surge-modes.ts';
import { type SurgeRun, surgeRun } from '../surge/surge-run.ts';
import type { Wave } from '../surge/wave.ts';
import { waveTimes } from '../surge/wave-times.ts';
import type { Side } from './certain.ts';
import type { Ground } from './ground.ts';
import { nodePlaces } from './node-places.ts';
import { type StrikeNetwork, strikeNetwork } from './strike-network.ts';
import type { StrikePoint } from './strike-point.ts';
import type { StrikePlaces } from './strike-result.ts';

/** One stroke into one point of a site. */
export interface StrikeRun {
  readonly ok: true;
  readonly at: StrikePoint;
  readonly network: StrikeNetwork;
  readonly run: SurgeRun;
  readonly places: StrikePlaces;
}

export interface RefusedStrike {
  readonly ok: false;
  /** no soil: nothing is known of an electrode's resistance; hangs free: what is struck has no way to the soil by metal. */
  readonly reason: 'no soil' | 'no electrode' | 'hangs free' | 'impossible inductances';
  /** Parts at fault. */
  readonly parts: readonly string[];
}

/** A site's metal on one side of the soil's range, taken apart for any stroke into any point of it. */
export interface StrikeSite {
  readonly ok: true;
  readonly network: StrikeNetwork;
  readonly modes: SurgeModes;
  readonly placeOfNode: ReadonlyMap<string, Position>;
  readonly graph: BondingRun['graph'];
  /** Nodes of points that are asked for as they are typed: `tower@30 ft`. */
  readonly named: ReadonlyMap<string, readonly string[]>;
}

export function strikeSite(
  bonded: Pick<BondingRun, 'graph' | 'site' | 'metal'>,
  ground: Ground,
  side: Side,
  named: StrikeSite['named'] = new Map(),
): StrikeSite | RefusedStrike {
  const network = strikeNetwork(bonded, ground, side);
  if (!network.ok) return network;
  const modes = surgeModes(network.surge);
  if (modes.ok) return { ok: true, network, modes, placeOfNode: nodePlaces(bonded), graph: bonded.graph, named };
  const parts = [...new Set(modes.branches.map((branch) => network.branches[branch]!.part))].sort();
  return { ok: false, reason: 'impossible inductances', parts };
}

/** A stroke whose channel comes down upright on a point of the site. */
export function strikeOf(site: StrikeSite, at: StrikePoint, wave: Wave): StrikeRun | RefusedStrike {
  const { network, modes, placeOfNode } = site;
  const node = surgeNode(network, at.node);
  if (node === null) return { ok: false, reason: 'hangs free', parts: [at.text] };
  const place = placeOfNode.get(at.node) ?? null;
  const channel = channelOf(at, place);
  const channelH = channel === null ? null : channelCoupling(network, channel);
  const enters = typeof at.channel === 'object' ? null : node;
  const run = surgeRun(modes, { node: enters, wave, channelH }, { untilS: 5 * waveTimes(wave).slowS });
  return { ok: true, at, network, run, places: placesOf(site, channel) };
}

/** Number of a graph's node in the surge network; null: it hangs on nothing that reaches the soil. */
function surgeNode({ nodes, at }: StrikeNetwork, id: string): number | null {
  const index = nodes.indexOf(id);
  return index < 0 || at[index]! < 0 ? null : at[index]!;
}

function channelOf({ channel }: StrikePoint, place: Position | null): StraightPiece | null {
  if (channel === 'line') return null;
  if (channel !== undefined) return channel;
  return place === null ? null : channelOver(place);
}

/**
 * A filament upright above the struck point. Beyond its length the field comes too late for a front; potentials against remote
 * earth go by it, differences of things near each other hardly. Ours.
 */
function channelOver([east, north, up]: Position): StraightPiece {
  return { from: [east, north, up + channelM], to: [east, north, up], radiusM: channelRadiusM };
}
export const channelM = 300;
export const channelRadiusM = 0.05;

function channelCoupling({ pieces, branchOfPiece, branches }: StrikeNetwork, channel: StraightPiece): Float64Array {
  const coupling = new Float64Array(branches.length);
  inductancesWith(channel, pieces).forEach((henry, i) => {
    const branch = branchOfPiece[i]!;
    coupling[branch] = coupling[branch]! + henry;
  });
  return coupling;
}

/** A part is met at its own node, a support at its foot. */
function placesOf({ network, placeOfNode, graph, named }: StrikeSite, channel: StraightPiece | null): StrikePlaces {
  const meeting = (part: string): string | null =>
    [...(named.get(part) ?? []), `${part}@base`, part, `${part}@top`].find(
      (id) => graph.hasNode(id) && surgeNode(network, id) !== null,
    ) ?? null;
  return {
    nodeOf: (part) => {
      const id = meeting(part);
      return id === null ? null : surgeNode(network, id);
    },
    placeOf: (part) => {
      const id = meeting(part);
      return id === null ? null : (placeOfNode.get(id) ?? null);
    },
    channel,
  };
}
