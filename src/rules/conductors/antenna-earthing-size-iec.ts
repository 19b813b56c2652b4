import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { sectionVerdict } from './size-rule.ts';

/** 16 mm² copper, 25 mm² aluminium, 50 mm² steel. */
const least = { copper: 16e-6, aluminium: 25e-6, steel: 50e-6, cladSteel: null };

export const antennaEarthingSizeIec = rule({
  id: 'antenna-earthing-size-iec',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: {
    document: 'IEC 60728-11',
    edition: '2016, 2023',
    clause: 'earthing conductor of an antenna',
    provenance: 'second-hand',
  },
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const leads = conductors.filter((c) => c.role === 'mast lead' || c.role === 'down conductor');
    return leads.length === 0 ? nothingThere({ sections }, 'conductors') : leads.map((c) => sectionVerdict(c, least));
  },
});
