import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { communicationsLeads } from './leads-of.ts';

/** 14 AWG copper. */
const least = { copper: 2.08e-6, aluminium: null, steel: null, cladSteel: null };

export const communicationsConductorSize = rule({
  id: 'communications-conductor-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2020', clause: '800.100(A)(3)', provenance: 'second-hand' },
  limits: limitsOf(least),
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const leads = communicationsLeads(facts);
    return leads.length === 0 ? nothingThere(facts, 'conductors') : leads.map((c) => sectionVerdict(c, least, 'awg'));
  },
});
