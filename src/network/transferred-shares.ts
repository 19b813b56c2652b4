import type { Group } from '../bonding/bonding.ts';
import { transferredShare } from '../electrodes/transferred.ts';
import type { Ground } from './ground.ts';

/** Potential that an electrode outside a group takes on, per volt of the group's rise; bounds by the enclosing soils. */
export interface TransferredShare {
  readonly electrode: string;
  readonly group: string;
  readonly share: { readonly value: number | null; readonly low: number; readonly high: number };
}

/**
 * For each group of electrodes and each electrode outside it, both with known places: what reaches the one through the soil
 * when the other is lifted to one volt by a current from far away. The metal of the group counts as one potential.
 */
export function transferredShares(groups: readonly Group[], ground: Ground): readonly TransferredShare[] {
  const placed = groups.map((group) => ({
    id: group.id,
    electrodes: group.electrodes.filter((e) => ground.indexOf.has(e)),
  }));
  return placed.flatMap(({ id: group, electrodes }) =>
    placed
      .filter((other) => other.id !== group)
      .flatMap((other) => other.electrodes)
      .flatMap((electrode) => {
        if (electrodes.length === 0) return [];
        const { low, likely, high } = ground.together;
        const [members, outside] = [electrodes.map((id) => ground.indexOf.get(id)!), ground.indexOf.get(electrode)!];
        const shares = [low, likely, high].map((s) => (s === null ? null : transferredShare(s, members, outside)));
        const known = shares.filter((share) => share !== null);
        if (known.length === 0) return [];
        const share = { value: shares[1] ?? null, low: Math.min(...known), high: Math.max(...known) };
        return [{ electrode, group, share }];
      }),
  );
}
