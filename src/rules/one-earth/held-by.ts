import type { Facts } from '../../facts/facts.ts';
import { addBond } from '../changes/add-bond.ts';
import { isolatedGroups, mayGoOn, underGroup } from '../isolated-groups.ts';
import { isWhole } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';
import { ownSupplyOf, twoSupplies } from './own-supply.ts';

/**
 * Of the parts that reach the service when ties that are no bonds count too (`wider`): met where bonds alone do it, else
 * not met for the reason `apart`. Shared by the conditions on cable shields and on cords.
 */
export function heldBy(
  facts: Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'bonding' | 'site'>,
  parts: readonly string[],
  wider: ReadonlySet<string>,
  apart: Pick<Verdict, 'because'>,
): readonly Verdict[] {
  const { bonding } = facts;
  if (bonding.service.is !== 'known') return [{ is: 'not applicable', because: { key: 'no service' } }];
  const { bonds, perhaps } = bonding.serviceBy;
  const reached = parts.filter((id) => bonds.has(id) || wider.has(id));
  if (reached.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
  const groups = isolatedGroups(bonding, () => true);
  return reached.map((id): Verdict => {
    const at = [id];
    if (bonds.has(id)) return { is: 'met', at, because: { key: 'by bonds' } };
    if (perhaps.has(id) || mayGoOn(bonding, id) || !isWhole(facts, 'conductors')) {
      return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
    }
    // what stands on a supply of its own is not to be tied before somebody has looked
    const own = ownSupplyOf(id, facts);
    if (own?.is === 'perhaps') return { ...twoSupplies(at, own), ...underGroup(id, groups) };
    const tie = own !== null ? {} : addBond(facts, id, bonding.service.part);
    return { is: 'not met', at, ...apart, ...underGroup(id, groups), ...tie };
  });
}
