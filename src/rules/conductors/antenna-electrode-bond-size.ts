import { communicationsTies } from '../conductor-sizes/communications-ties.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
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
  needs: ['sections', 'conductors', 'site'],
  check({ sections, conductors, site }) {
    const electrodes = new Set(site.electrodes.map((e) => e.id));
    // the ties of telephone and cable are asked by a clause of their own
    const others = new Set(communicationsTies({ conductors, site }).map((c) => c.id));
    const ties = conductors.filter((c) => {
      if (others.has(c.id)) return false;
      if (c.role === 'electrode tie') return true;
      return (
        c.role === 'bond' && c.ends.some((id) => id !== null && (electrodes.has(id) || id === site.header.service))
      );
    });
    return ties.length === 0
      ? nothingThere({ sections }, 'conductors')
      : ties.map((c) => sectionVerdict(c, least, 'awg'));
  },
});
