import type { Facts } from '../../facts/facts.ts';
import { addBond } from '../changes/add-bond.ts';
import { type IsolatedGroup, isolatedGroups } from '../isolated-groups.ts';
import { isWhole } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { ownSupplyOf, twoSupplies } from './own-supply.ts';

export const ukMultipleEarthRfRodBond = rule({
  id: 'uk-multiple-earth-rf-rod-bond',
  family: 'code',
  severity: 'hazard',
  codeSets: ['uk'],
  source: { document: 'BS 7671', edition: null, clause: 'main bonding on TN-C-S supplies', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'electrodes', 'site'],
  check(facts) {
    const { header, bonding, electrodes } = facts;
    if (bonding.service.is === 'none') return [{ is: 'not applicable', because: { key: 'field station' } }];
    const own = electrodes.filter((e) => e.part.owner !== 'utility').map((e) => e.id);
    if (own.length === 0 || header.supply === 'tt' || header.supply === 'tn-s') {
      return [{ is: 'not applicable', because: { key: 'other supply' } }];
    }
    const isolated = isolatedGroups(bonding, (id) => own.some((e) => isOf(id, e)));
    if (header.supply === 'unknown') {
      return [{ is: 'cannot tell', at: own, because: { key: 'supply unknown' }, settle: { key: 'find supply' } }];
    }
    const whole = isWhole(facts, 'conductors');
    const apart = whole ? isolated : [];
    const rest = own.filter((e) => !apart.some((g) => g.electrodes.some((id) => isOf(id, e))));
    const settled = rest.map((id): Verdict => {
      if (bonding.serviceBy.bonds.has(id)) return { is: 'met', at: [id], because: { key: 'tied' } };
      return { is: 'cannot tell', at: [id], because: { key: 'perhaps' }, settle: { key: 'trace' } };
    });
    return [...apart.map((g) => ofGroup(g, facts)), ...settled];
  },
});

/** The electrode itself, or one of its rods. */
const isOf = (id: string, electrode: string) => id === electrode || id.startsWith(`${electrode}.`);

/** It leads where the service is known (see leading-finding.ts); else nobody knows which group is apart. */
function ofGroup(group: IsolatedGroup, facts: Pick<Facts, 'bonding' | 'site' | 'isAmerican'>): Verdict {
  const { bonding } = facts;
  const { electrodes, finding } = group;
  const own = ownSupplyOf(group.id, facts);
  if (own !== null) return twoSupplies(electrodes, own);
  const under = bonding.service.is === 'known' ? {} : { under: finding };
  const tie = addBond(facts, electrodes[0]!, bonding.service.part);
  return { is: 'not met', at: electrodes, because: { key: 'apart' }, ...under, ...tie };
}
