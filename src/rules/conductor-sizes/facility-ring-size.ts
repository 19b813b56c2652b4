import { claimsOf } from '../claims.ts';
import { limitsOf, type Sized, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';

/** 1/0 AWG copper in defence, 4/0 AWG in aviation. */
const defence = { copper: 53.5e-6, aluminium: null, steel: null, cladSteel: null };
const aviation = { ...defence, copper: 107e-6 };

export const facilityRingSize = rule({
  id: 'facility-ring-size',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: {
    document: 'MIL-HDBK-419A; TM 5-811-3; MIL-HDBK-1004/6; FAA-STD-019',
    edition: 'vol. II',
    clause: '1.13',
    provenance: 'read',
  },
  limits: [...limitsOf(defence), { key: 'areaM2', value: aviation.copper, sense: 'least', of: 'copper, aviation' }],
  needs: ['header', 'sections', 'conductors', 'site'],
  check({ header, sections, conductors, site }) {
    const claims = claimsOf(header);
    if (!claims.military && !claims.aviation) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const rings = site.electrodes.filter((e) => e.present !== 'no' && e.kind === 'buried wire' && e.closed === 'yes');
    const all: readonly Sized[] = [
      ...rings.map(({ id, wire }) => ({ id, wire, areaM2: wire?.areaM2 ?? null })),
      ...conductors.filter((c) => c.role === 'electrode tie'),
    ];
    if (all.length === 0) return nothingThere({ sections }, 'electrodes');
    return all.map((c) => sectionVerdict(c, claims.aviation ? aviation : defence));
  },
});
