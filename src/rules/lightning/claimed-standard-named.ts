import { claimsOf } from '../claims.ts';
import { rule } from '../rule.ts';

/** As people type that there is none. */
const none = /^\s*(?:no|none|false)\s*$/i;

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
    const { certificate } = header;
    if (certificate === null)
      return [{ is: 'cannot tell', at: [], because: { key: 'nobody knows' }, settle: { key: 'ask for it' } }];
    if (certificate !== undefined && !none.test(certificate)) return [{ is: 'met', at: [], because: { key: 'named' } }];
    return [{ is: 'not met', at: [], because: { key: 'not named' } }];
  },
});
