import { isolatedGroups } from '../isolated-groups.ts';
import { isWhole } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const ukMultipleEarthRfRodBond = rule({
  id: 'uk-multiple-earth-rf-rod-bond',
  family: 'code',
  severity: 'hazard',
  codeSets: ['uk'],
  source: { document: 'BS 7671', edition: null, clause: 'main bonding on TN-C-S supplies', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'electrodes'],
  check(facts) {
    const { header, bonding, electrodes } = facts;
    const own = electrodes.filter((e) => e.part.owner !== 'utility').map((e) => e.id);
    if (own.length === 0 || header.supply === 'tt' || header.supply === 'tn-s') {
      return [{ is: 'not applicable', because: { key: 'other supply' } }];
    }
    const isolated = isolatedGroups(bonding, (id) => own.includes(id));
    if (header.supply === 'unknown') {
      return [{ is: 'cannot tell', at: own, because: { key: 'supply unknown' }, settle: { key: 'find supply' } }];
    }
    return own.map((id): Verdict => {
      const apart = isolated.find((g) => g.electrodes.includes(id));
      if (bonding.serviceBy.bonds.has(id)) return { is: 'met', at: [id], because: { key: 'tied' } };
      if (apart === undefined || !isWhole(facts, 'conductors')) {
        return { is: 'cannot tell', at: [id], because: { key: 'perhaps' }, settle: { key: 'trace' } };
      }
      return { is: 'not met', at: [id], because: { key: 'apart' }, under: apart.finding };
    });
  },
});
