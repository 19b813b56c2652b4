import { isolatedGroups, underGroup } from '../isolated-groups.ts';
import { isWhole } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const screensNotSoleBond = rule({
  id: 'screens-not-sole-bond',
  family: 'practice',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'ours' },
  needs: ['header', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    if (bonding.service.is !== 'known') return [{ is: 'not applicable', because: { key: 'no service' } }];
    const parts = [...site.electrodes, ...site.supports, ...site.bars].map((p) => p.id);
    const { bonds, bondsAndShields, perhaps } = bonding.serviceBy;
    const reached = parts.filter((id) => bondsAndShields.has(id));
    if (reached.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    const groups = isolatedGroups(bonding, () => true);
    return reached.map((id): Verdict => {
      const at = [id];
      if (bonds.has(id)) return { is: 'met', at, because: { key: 'by bonds' } };
      if (perhaps.has(id) || !isWhole(facts, 'conductors')) {
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
      }
      return { is: 'not met', at, because: { key: 'shield only' }, ...underGroup(id, groups) };
    });
  },
});
