import { rule } from '../rule.ts';
import { heldBy } from './held-by.ts';

export const screensNotSoleBond = rule({
  id: 'screens-not-sole-bond',
  family: 'practice',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'ours' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    const parts = [...site.electrodes, ...site.supports, ...site.bars].map((p) => p.id);
    return heldBy(facts, parts, bonding.serviceBy.bondsAndShields, { because: { key: 'shield only' } });
  },
});
