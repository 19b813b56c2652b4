import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Electrode } from '../site/site.ts';
import type { GroupNetwork } from './dc-network.ts';
import type { EarthPoint } from './earth-ranges.ts';
import { electrodeAt } from './electrode-at.ts';
import type { Ground } from './ground.ts';
import { type LeakingNetwork, leakingNetwork } from './leaking-network.ts';
import { perhapsInSoil } from './perhaps-in-soil.ts';

/**
 * A network with all the points at which it leaks into the soil: its electrodes, the pieces of what is long, and what may lie
 * in the soil besides. null: it has no electrode.
 */
export function earthPoints(
  {
    graph,
    site,
    electrodes,
  }: Pick<BondingRun, 'graph' | 'site'> & { readonly electrodes: ReadonlyMap<string, Electrode> },
  whole: GroupNetwork,
  ground: Ground,
): LeakingNetwork | null {
  const taken = new Set<string>();
  const leaking = leakingNetwork(whole, ground);
  const own = whole.nodes.flatMap((id, node): EarthPoint[] => {
    const { kind, part } = graph.getNodeAttributes(id);
    const owned = electrodes.get(part);
    if (kind !== 'electrode' || owned === undefined) return [];
    const electrode = electrodeAt(owned, id);
    if (taken.has(electrode.id) || leaking.cut.has(electrode.id)) return [];
    taken.add(electrode.id);
    const bonded = whole.bonded[node]!;
    const certain = owned.present === 'unknown' ? 'perhaps' : 'there';
    return [{ id: electrode.id, part, node, bonded, alone: ground.alone.get(part)!, certain }];
  });
  if (own.length + leaking.cut.size === 0) return null;
  return { ...leaking, points: [...own, ...leaking.points, ...perhapsInSoil({ graph, site }, whole, ground)] };
}
