import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { sizedElsewhere } from './sized-elsewhere.ts';

/** 6 AWG copper. */
const least = { copper: 13.3e-6, aluminium: null, steel: null, cladSteel: null };

export const tacticalConductorSize = rule({
  id: 'tactical-conductor-size',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: {
    document: 'Army preventive maintenance monthly 599',
    edition: '2002',
    clause: 'grounding of shelters',
    provenance: 'read',
  },
  limits: limitsOf(least),
  needs: ['header', 'sections', 'conductors', 'site'],
  check({ header, sections, conductors, site }) {
    if (header.temporary !== 'yes') return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const electrodes = new Set(site.electrodes.map((e) => e.id));
    const leads = conductors.filter((c) => {
      const onElectrode = [...c.ends, ...c.passes].some((id) => id !== null && electrodes.has(id));
      return onElectrode && c.role !== 'unknown';
    });
    if (leads.length === 0) return nothingThere({ sections }, 'conductors');
    return sizedElsewhere(
      leads.map((c) => sectionVerdict(c, least, 'awg')),
      'mast-ground-size',
    );
  },
});
