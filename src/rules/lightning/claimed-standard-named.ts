import { claimsOf } from '../claims.ts';
import { rule } from '../rule.ts';

export const claimedStandardNamed = rule({
  id: 'claimed-standard-named',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'NFPA 780; UFGS 26 41 00',
    edition: '2023',
    clause: '1.5.3; submittals',
    provenance: 'second-hand',
  },
  needs: ['header'],
  check({ header }) {
    if (!claimsOf(header).lightning) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    if (header.certificate != null) return [{ is: 'met', at: [], because: { key: 'named' } }];
    return [{ is: 'not met', at: [], because: { key: 'not named' } }];
  },
});
