import { rule } from '../rule.ts';
import { mastsEarthed } from './earthed.ts';

export const mastGrounded = rule({
  id: 'mast-grounded',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us', 'ca', 'au'],
  source: { document: 'NFPA 70', edition: null, clause: '810.15, 810.21, 810.51', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'masts', 'site'],
  check: mastsEarthed,
});
