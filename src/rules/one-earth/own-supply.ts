import type { Site } from '../../site/site.ts';
import type { IsolatedGroup } from '../isolated-groups.ts';
import type { Verdict } from '../rule.ts';
import { panels } from './cut-off-panels.ts';

/**
 * The panel that makes a group the TT part of a site whose supply is of another kind: typed so, and fed without a protective
 * conductor. Such a part is accepted in place of a bond, where nothing joins or brings within reach what stands on the two
 * sides; a bond between the two would carry faults of the supplier's neutral there. null: none.
 */
export function ownSupply({ parts }: IsolatedGroup, site: Site): string | null {
  if (site.header.supply === 'tt') return null;
  const panel = site.equipment.find((e) => e.supply === 'tt' && e.present !== 'no' && parts.has(e.id));
  if (panel === undefined) return null;
  const sources = new Set(site.equipment.filter((e) => panels.includes(e.kind) && !parts.has(e.id)).map((e) => e.id));
  const brings = site.lines.some((l) => {
    if (l.kind !== 'mains' || l.present === 'no' || l.protectiveConductor === 'no') return false;
    const ids = l.path.flatMap((s) => (s.is === 'part' ? [s.at.part ?? ''] : []));
    return ids.includes(panel.id) && ids.some((id) => sources.has(id));
  });
  return brings ? null : panel.id;
}

/** The same of the group that a part belongs to. */
export function ownSupplyOf(part: string, groups: readonly IsolatedGroup[], site: Site): string | null {
  const group = groups.find((g) => g.parts.has(part));
  return group === undefined ? null : ownSupply(group, site);
}

/** Nobody can tell from a file whether the two parts are far enough apart; no bond is offered before somebody has. */
export function twoSupplies(at: readonly string[], panel: string): Verdict {
  const values = { panel };
  return {
    is: 'cannot tell',
    at,
    because: { key: 'supply of its own', values },
    settle: { key: 'look between the two', values },
  };
}
