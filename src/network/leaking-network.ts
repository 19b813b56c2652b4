import type { RangedBranch } from '../currents/bounds.ts';
import { scale } from '../units/interval.ts';
import type { GroupNetwork } from './dc-network.ts';
import type { EarthPoint } from './earth-ranges.ts';
import { type Ground, pieceId } from './ground.ts';
import type { LeakingConductor } from './leaking-conductors.ts';

/** A group's network whose buried bare conductors are cut into pieces that leak at their middles. */
export interface LeakingNetwork {
  /** As it was, but branches and their parts; new nodes have numbers beyond those of `network.nodes`. */
  readonly network: GroupNetwork;
  readonly nodeCount: number;
  readonly points: readonly EarthPoint[];
}

/**
 * Cuts each span of a leaking conductor into its pieces: half a piece of metal, the node where it leaks, half a piece. One
 * without a known place leaks whole at one of its ends, perhaps.
 */
export function leakingNetwork(network: GroupNetwork, ground: Ground): LeakingNetwork {
  const byId = new Map(ground.leaking.map((c) => [c.id, c]));
  const grown = { branches: [] as RangedBranch[], parts: [] as string[], spans: [] as (number | null)[] };
  const points: EarthPoint[] = [];
  const counted = new Set<string>();
  let nodeCount = network.nodes.length;
  for (const [at, branch] of network.branches.entries()) {
    const [part, span] = [network.parts[at]!, network.spans[at]!];
    const leak = span === null ? undefined : byId.get(part);
    const pieces = leak?.spans?.[span!] ?? [];
    if (leak !== undefined && leak.spans === null && !counted.has(part)) {
      counted.add(part);
      points.push(...wholePoint(leak, branch.from, network.bonded[branch.from]!, ground));
    }
    const middles = pieces.map((_, piece) => {
      points.push(piecePoint(leak!, pieceId(part, span!, piece), nodeCount, network.bonded[branch.from]!, ground));
      return nodeCount++;
    });
    const stations = [branch.from, ...middles, branch.to];
    for (const [k, to] of stations.slice(1).entries()) {
      const isEnd = k === 0 || k === stations.length - 2;
      const share = pieces.length === 0 ? 1 : (isEnd ? 0.5 : 1) / pieces.length;
      grown.branches.push({ ...shareOf(branch, share), from: stations[k]!, to });
      grown.parts.push(part);
      grown.spans.push(span);
    }
  }
  return { network: { ...network, ...grown }, nodeCount, points };
}

function shareOf(branch: RangedBranch, share: number): RangedBranch {
  const { resistanceOhm, nominalOhm } = branch;
  return {
    ...branch,
    resistanceOhm: scale(resistanceOhm, share),
    nominalOhm: nominalOhm === null ? null : nominalOhm * share,
  };
}

function piecePoint(
  leak: LeakingConductor,
  id: string,
  node: number,
  bonded: number,
  { together, indexOf }: Ground,
): EarthPoint {
  const index = indexOf.get(id)!;
  const own = (side: 'low' | 'likely' | 'high') => together[side]?.aloneOhm[index] ?? null;
  const [low, likely, high] = [own('low'), own('likely'), own('high')];
  const ohm = low === null ? null : { low, value: likely, high: high ?? Number.POSITIVE_INFINITY };
  return { id, part: leak.id, node, bonded, alone: { ohm, how: 'computed' }, certain: leak.certain };
}

function wholePoint(
  { id }: LeakingConductor,
  node: number,
  bonded: number,
  { aloneOfLeaking }: Ground,
): readonly EarthPoint[] {
  const ohm = aloneOfLeaking.get(id);
  return ohm === undefined ? [] : [{ id, part: id, node, bonded, alone: { ohm, how: 'computed' }, certain: 'perhaps' }];
}
