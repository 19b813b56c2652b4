import type { Bonding, Group } from '../bonding/bonding.ts';

/** A group with electrodes of its own that does not reach the service's system by bonds. */
export interface IsolatedGroup {
  readonly id: string;
  readonly electrodes: readonly string[];
  readonly parts: ReadonlySet<string>;
  /** Id of the finding that stands for it. */
  readonly finding: string;
}

/**
 * Groups that a rule of one earth finds apart. With the service known, those without it. With the service unknown, all of
 * them where there are several, under one finding: at most one of them can hold the service. A group that may go on
 * further than anybody knows is not found apart.
 */
export function isolatedGroups(bonding: Bonding, isOwn: (electrode: string) => boolean): readonly IsolatedGroup[] {
  if (bonding.service.is === 'none') return [];
  const groups = bonding.groups
    .map((g) => ({ ...g, electrodes: g.electrodes.filter(isOwn) }))
    .filter((g) => g.electrodes.length > 0 && !bonding.openEnds.has(g.id));
  if (bonding.service.is === 'known') return withoutService(groups, bonding);
  return noneWithService(groups.filter((g) => !bonding.perhapsJoined.has(g.id)));
}

/** Whether a part's group may go on by a wire that nobody traced: nothing can be said to be missing of it. */
export function mayGoOn({ openEnds, groupOf }: Bonding, part: string): boolean {
  return openEnds.has(groupOf.get(part) ?? '');
}

function withoutService(groups: readonly Group[], bonding: Bonding): readonly IsolatedGroup[] {
  const perhaps = new Set(bonding.perhapsUnbonded.map((p) => p.electrode));
  const unbonded = new Set(bonding.unbondedElectrodes ?? []);
  return (
    groups
      .filter((g) => !g.hasService && !g.electrodes.some((e) => perhaps.has(e)))
      // of one that may not be there the wire that lands on it is its bond, if it is there
      .filter((g) => g.electrodes.some((e) => unbonded.has(e)))
      .map((g) => isolated(g, g.electrodes))
  );
}

function noneWithService(groups: readonly Group[]): readonly IsolatedGroup[] {
  if (groups.length < 2) return [];
  const all = groups.flatMap((g) => g.electrodes).sort();
  return groups.map((g) => isolated(g, all));
}

function isolated({ id, electrodes, parts }: Group, at: readonly string[]): IsolatedGroup {
  return { id, electrodes, parts: new Set(parts), finding: `all-electrodes-one-system:${at.join('+')}` };
}

/** The finding of the isolated group that a part belongs to, as the parent of a finding at that part. */
export function underGroup(part: string, groups: readonly IsolatedGroup[]): { readonly under?: string } {
  const group = groups.find((g) => g.parts.has(part));
  return group === undefined ? {} : { under: group.finding };
}
