import { rule } from '../rule.ts';
import { mastsEarthed } from './earthed.ts';

export const iecMastEarthed = rule({
  id: 'iec-mast-earthed',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: { document: 'IEC 60728-11', edition: '2016, 2023', clause: 'outdoor antennas', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'masts', 'site'],
  check: mastsEarthed,
});
