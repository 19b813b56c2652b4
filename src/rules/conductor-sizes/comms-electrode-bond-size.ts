import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { communicationsTies } from './communications-ties.ts';

/** 6 AWG copper. */
const least = { copper: 13.3e-6, aluminium: null, steel: null, cladSteel: null };

export const commsElectrodeBondSize = rule({
  id: 'comms-electrode-bond-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2020', clause: '800.100(D)', provenance: 'second-hand' },
  clauses: [
    { from: 1999, clause: '800.100(D), 820.100(D)' },
    { from: 2020, clause: '800.100(D)' },
  ],
  limits: limitsOf(least),
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const ties = communicationsTies(facts);
    return ties.length === 0 ? nothingThere(facts, 'electrodes') : ties.map((c) => sectionVerdict(c, least, 'awg'));
  },
});
