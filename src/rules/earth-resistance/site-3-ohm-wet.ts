import { claimsOf } from '../claims.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { systemVerdict } from './system-verdict.ts';

const mostOhm = 3;
/** Names of soils that are wet. */
const wet = /\b(?:wet|marsh|peat|saturated)\b/;

export const site3OhmWet = rule({
  id: 'site-3-ohm-wet',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MO-322', edition: null, clause: 'resistance to earth', provenance: 'read' },
  limits: [{ key: 'resistanceOhm', value: mostOhm, sense: 'most' }],
  needs: ['header', 'sections', 'site', 'bonding', 'electrodes', 'earth'],
  check(facts) {
    if (!claimsOf(facts.header).ordnance) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    if (!wet.test(facts.site.soil?.type ?? '')) return [{ is: 'not applicable', because: { key: 'not wet' } }];
    if (facts.electrodes.length === 0) return nothingThere(facts, 'electrodes');
    return [systemVerdict(facts, mostOhm)];
  },
});
