import { antennaLeads } from '../conductor-sizes/leads-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { panelLeads } from './antenna-ties.ts';
import { limitsOf, sectionVerdict } from './size-rule.ts';

/** 10 AWG copper, 8 AWG aluminium, 17 AWG copper-clad steel or bronze. */
const least = { copper: 5.26e-6, aluminium: 8.37e-6, steel: null, cladSteel: 1.04e-6 };

export const mastGroundSize = rule({
  id: 'mast-ground-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.21(H)', provenance: 'second-hand' },
  limits: limitsOf(least),
  needs: ['sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const leads = [...antennaLeads(facts), ...panelLeads(facts)];
    return leads.length === 0 ? nothingThere(facts, 'conductors') : leads.map((c) => sectionVerdict(c, least, 'awg'));
  },
});
