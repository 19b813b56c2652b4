import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { antennaTies } from './antenna-ties.ts';
import { limitsOf, sectionVerdict } from './size-rule.ts';

/** 6 AWG copper. */
const least = { copper: 13.3e-6, aluminium: null, steel: null, cladSteel: null };

export const antennaElectrodeBondSize = rule({
  id: 'antenna-electrode-bond-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '1999 to 2023', clause: '810.21(J)', provenance: 'second-hand' },
  limits: limitsOf(least),
  needs: ['sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const ties = antennaTies(facts);
    return ties.length === 0 ? nothingThere(facts, 'conductors') : ties.map((c) => sectionVerdict(c, least, 'awg'));
  },
});
