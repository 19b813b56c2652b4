import { isolatedGroups, underGroup } from '../isolated-groups.ts';
import { isWhole } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const outletGroundNotLightningGround = rule({
  id: 'outlet-ground-not-lightning-ground',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '250.121, 810.21(F)', provenance: 'memory' },
  needs: ['header', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    if (bonding.service.is !== 'known') return [{ is: 'not applicable', because: { key: 'no service' } }];
    const outdoors = [...site.electrodes, ...site.supports, ...site.antennas, ...site.bars, ...site.arresters];
    const { bonds, bondsAndCords, perhaps } = bonding.serviceBy;
    const reached = outdoors.map((p) => p.id).filter((id) => bonds.has(id) || bondsAndCords.has(id));
    if (reached.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    const groups = isolatedGroups(bonding, () => true);
    return reached.map((id): Verdict => {
      const at = [id];
      if (bonds.has(id)) return { is: 'met', at, because: { key: 'by bonds' } };
      if (perhaps.has(id) || !isWhole(facts, 'conductors')) {
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
      }
      return { is: 'not met', at, because: { key: 'cord only' }, ...underGroup(id, groups) };
    });
  },
});
