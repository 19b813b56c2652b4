import { earthingWires } from '../conductor-sizes/earthing-wires.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { limitsOf, sectionVerdict } from './size-rule.ts';

/** 6 mm² copper, 16 mm² aluminium, 50 mm² steel. */
const least = { copper: 6e-6, aluminium: 16e-6, steel: 50e-6, cladSteel: null };

export const mainBondingSizeIec = rule({
  id: 'main-bonding-size-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 60364-5-54', edition: '2011', clause: '544.1', provenance: 'second-hand' },
  limits: limitsOf(least),
  needs: ['sections', 'conductors', 'site'],
  check({ sections, conductors, site }) {
    // earthing conductors are asked by a clause of their own
    const others = new Set(earthingWires(conductors, site).map((c) => c.id));
    const bonds = conductors.filter((c) => (c.role === 'bond' || c.role === 'electrode tie') && !others.has(c.id));
    return bonds.length === 0 ? nothingThere({ sections }, 'conductors') : bonds.map((c) => sectionVerdict(c, least));
  },
});
