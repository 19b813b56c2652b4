import { addBond } from '../changes/add-bond.ts';
import { isolatedGroups, mayGoOn, underGroup } from '../isolated-groups.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const antennaRodIsNotASubstitute = rule({
  id: 'antenna-rod-is-not-a-substitute',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '1999 to 2023', clause: '810.21(J)', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    if (bonding.service.is === 'none') return [{ is: 'not applicable', because: { key: 'field station' } }];
    const earthed = [...site.antennas, ...site.supports].map((p) => p.id).filter((id) => bonding.earthBy.bonds.has(id));
    if (earthed.length === 0) return nothingThere(facts, 'antennas');
    const groups = isolatedGroups(bonding, () => true);
    return earthed.map((id): Verdict => {
      const at = [id];
      if (bonding.service.is === 'unknown') {
        return { is: 'cannot tell', at, because: { key: 'service unknown' }, settle: { key: 'find service' } };
      }
      if (bonding.serviceBy.bonds.has(id)) return { is: 'met', at, because: { key: 'both' } };
      if (bonding.serviceBy.perhaps.has(id) || mayGoOn(bonding, id) || !isWhole(facts, 'conductors')) {
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
      }
      const tie = addBond(facts, id, bonding.service.part);
      return { is: 'not met', at, because: { key: 'rod only' }, ...underGroup(id, groups), ...tie };
    });
  },
});
