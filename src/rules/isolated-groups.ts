import type { Bonding } from '../bonding/bonding.ts';

/** A group with electrodes of its own that does not reach the service's system by bonds. */
export interface IsolatedGroup {
  readonly id: string;
  readonly electrodes: readonly string[];
  readonly parts: ReadonlySet<string>;
  /** Id of the finding that stands for it. */
  readonly finding: string;
}

/**
 * Groups that a rule of one earth finds apart. With the service known, those without it; with the service unknown, all but
 * the one with the most electrodes (the first of equals), since one of them at least is apart.
 */
export function isolatedGroups(bonding: Bonding, isOwn: (electrode: string) => boolean): readonly IsolatedGroup[] {
  if (bonding.service.is === 'none') return [];
  const withElectrodes = bonding.groups
    .map((g) => ({ ...g, electrodes: g.electrodes.filter(isOwn) }))
    .filter((g) => g.electrodes.length > 0);
  const most = Math.max(0, ...withElectrodes.map((g) => g.electrodes.length));
  const main = withElectrodes.find((g) =>
    bonding.service.is === 'known' ? g.hasService : g.electrodes.length === most,
  );
  const perhaps = new Set(bonding.perhapsUnbonded.map((p) => p.electrode));
  return withElectrodes
    .filter((g) => g !== main && !g.hasService && !g.electrodes.some((e) => perhaps.has(e)))
    .map((g) => ({
      id: g.id,
      electrodes: g.electrodes,
      parts: new Set(g.parts),
      finding: `all-electrodes-one-system:${g.electrodes.join('+')}`,
    }));
}

/** The finding of the isolated group that a part belongs to, as the parent of a finding at that part. */
export function underGroup(part: string, groups: readonly IsolatedGroup[]): { readonly under?: string } {
  const group = groups.find((g) => g.parts.has(part));
  return group === undefined ? {} : { under: group.finding };
}
