import { rule } from '../rule.ts';
import { mastsEarthed } from './earthed.ts';
import { indoorMasts } from './indoor-masts.ts';

export const mastGrounded = rule({
  id: 'mast-grounded',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us', 'ca', 'au'],
  source: { document: 'NFPA 70', edition: null, clause: '810.15, 810.21, 810.51', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'masts', 'site'],
  check(facts) {
    const indoors = indoorMasts(facts.site);
    const masts = facts.masts.filter((m) => !indoors.has(m.id));
    if (masts.length === 0 && indoors.size > 0) return [{ is: 'not applicable', because: { key: 'indoors' } }];
    return mastsEarthed(facts, masts);
  },
});
