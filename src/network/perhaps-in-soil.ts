import type { BondingRun } from '../bonding/bonding-of.ts';
import type { BondingGraph } from '../bonding/graph-builder.ts';
import type { Support } from '../site/site.ts';
import type { GroupNetwork } from './dc-network.ts';
import type { EarthPoint } from './earth-ranges.ts';
import type { Ground } from './ground.ts';

/** Radius of the hemisphere that a footing or an anchor of unknown size does not exceed, metres. Common practice, no source. */
const footingM = 1;
const anchorM = 0.4;

/** Kinds of support that stand in the ground on metal. */
const standing: ReadonlySet<string> = new Set(['tower', 'lattice tower', 'mast', 'crank-up tower', 'tilt-over mast']);

/**
 * Footings of towers and anchors of guys without insulators, which nobody typed as electrodes: in for the low answer, out for
 * the others. At a point of their support that belongs to the network.
 */
export function perhapsInSoil(
  { graph, site }: Pick<BondingRun, 'graph' | 'site'>,
  network: GroupNetwork,
  ground: Ground,
): readonly EarthPoint[] {
  const leastOhmM = ground.soil?.profile.low?.resistivityOhmM.reduce((least, ohmM) => Math.min(least, ohmM)) ?? null;
  if (leastOhmM === null) return [];
  const point = (part: string, node: number, radiusM: number): EarthPoint => {
    const low = leastOhmM / (2 * Math.PI * radiusM);
    const ohm = { low, value: null, high: Number.POSITIVE_INFINITY };
    const bonded = network.bonded[node]!;
    return { id: `${part}/soil`, part, node, bonded, alone: { ohm, how: 'computed' }, certain: 'perhaps' };
  };
  return site.supports.flatMap((support) => {
    const node = nodeOf(support, network, graph);
    if (node === null || support.metal === 'none') return [];
    const anchors = support.guys.filter((g) => g.metal !== 'none' && g.insulators !== 'yes');
    const isStanding = standing.has(support.kind) && support.on === null;
    return [
      ...(isStanding ? [point(support.id, node, footingM)] : []),
      ...anchors.map((g) => point(g.id, node, anchorM)),
    ];
  });
}

function nodeOf(support: Support, { nodes }: GroupNetwork, graph: BondingGraph): number | null {
  const own = nodes.flatMap((id, i) => (graph.getNodeAttribute(id, 'part') === support.id ? [i] : []));
  return own.find((i) => nodes[i] === `${support.id}@base`) ?? own[0] ?? null;
}
