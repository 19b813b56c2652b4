import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { systemVerdict } from './system-verdict.ts';

const mostOhm = 10;

export const site10Ohm = rule({
  id: 'site-10-ohm',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us', 'iec', 'uk', 'au'],
  source: {
    document: 'IEC 62305-3; MIL-STD-188-124; BS 7430; AS/NZS 1768',
    edition: '2010',
    clause: '5.4.1 (recommendation)',
    provenance: 'read',
  },
  limits: [{ key: 'resistanceOhm', value: mostOhm, sense: 'most' }],
  needs: ['sections', 'site', 'bonding', 'electrodes', 'earth'],
  check(facts) {
    if (facts.electrodes.length === 0) return nothingThere(facts, 'electrodes');
    return [systemVerdict(facts, mostOhm)];
  },
});
