import type { Facts } from '../../facts/facts.ts';
import { addBond } from '../changes/add-bond.ts';
import { addRod } from '../changes/add-rod.ts';
import { isWhole, mayReachUntyped, nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';
import { mayReachSupplierEarth, reachesSupplierEarth } from '../supplier-earth.ts';

/** For each support of metal: does permanent metal lead from it to an electrode. Shared by the clauses that ask it. */
export function mastsEarthed(
  facts: Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'bonding' | 'site'>,
  masts: Facts['masts'],
): readonly Verdict[] {
  const { bonding } = facts;
  if (masts.length === 0) return nothingThere(facts, 'supports');
  const metal = masts.filter((m) => m.metal !== 'no');
  if (metal.length === 0) return [{ is: 'not applicable', because: { key: 'not of metal' } }];
  return metal.map((m): Verdict => {
    const at = [m.id];
    if (bonding.earthBy.bonds.has(m.id)) return { is: 'met', at, because: { key: 'earthed' } };
    if (m.metal === 'unknown')
      return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look at it' } };
    if (reachesSupplierEarth(facts, m.id))
      return { is: 'cannot tell', at, because: { key: 'supplier only' }, settle: { key: 'ask about earth' } };
    if (mayReachSupplierEarth(facts, m.id))
      return { is: 'cannot tell', at, because: { key: 'supply unknown' }, settle: { key: 'find supply' } };
    const open = bonding.earthBy.perhaps.has(m.id) || m.part.bonded === 'unknown' || mayReachUntyped(facts, m.id);
    if (open || !isWhole(facts, 'conductors')) {
      return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
    }
    return { is: 'not met', at, because: { key: 'no way' }, untied: at, ...leadToEarth(m.id, facts) };
  });
}

/** A lead from the foot to an electrode of the service's system, else to any that is the owner's; a new rod is tied to it. */
function leadToEarth(mast: string, facts: Pick<Facts, 'site' | 'header' | 'isAmerican' | 'bonding'>) {
  const { site, bonding } = facts;
  const own = site.electrodes.filter((e) => e.present !== 'no' && e.owner !== 'utility').map((e) => e.id);
  const to = own.find((id) => bonding.serviceBy.bonds.has(id)) ?? own[0];
  if (to !== undefined) return addBond(facts, `${mast}@base`, to);
  const service = bonding.service.is === 'known' ? bonding.service.part : null;
  return { change: addRod(facts, `${mast}@base`, service) };
}
