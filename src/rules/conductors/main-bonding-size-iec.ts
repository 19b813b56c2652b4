import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { sectionVerdict } from './size-rule.ts';

/** 6 mm² copper, 16 mm² aluminium, 50 mm² steel. */
const least = { copper: 6e-6, aluminium: 16e-6, steel: 50e-6, cladSteel: null };

export const mainBondingSizeIec = rule({
  id: 'main-bonding-size-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 60364-5-54', edition: '2011', clause: '542.3, 544.1', provenance: 'second-hand' },
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const bonds = conductors.filter((c) => ['bond', 'electrode tie', 'service electrode wire'].includes(c.role));
    return bonds.length === 0 ? nothingThere({ sections }, 'conductors') : bonds.map((c) => sectionVerdict(c, least));
  },
});
