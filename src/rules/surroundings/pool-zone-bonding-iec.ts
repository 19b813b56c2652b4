import { rule } from '../rule.ts';
import { metalAtPools } from './pool-metal.ts';

/** Outer edge of zone 2: 2 m of zone 1 and 1.5 m more from the water's edge, metres. */
const zoneTwoM = 3.5;

export const poolZoneBondingIec = rule({
  id: 'pool-zone-bonding-iec',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: { document: 'IEC 60364-7-702', edition: null, clause: 'supplementary bonding', provenance: 'memory' },
  limits: [{ key: 'distanceLengthM', value: zoneTwoM, sense: 'least' }],
  needs: ['header', 'sections', 'bonding', 'masts', 'site'],
  check: (facts) => metalAtPools(facts, zoneTwoM, () => 'yes'),
});
