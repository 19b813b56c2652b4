import type { ConductorFacts } from '../../facts/facts.ts';
import { claimsOf } from '../claims.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 2000 circular mils for each foot, square metres for each metre; printed as 3.3 mm². */
const leastM2PerM = 3.3e-6;

export const sizeByLength = rule({
  id: 'size-by-length',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: {
    document: 'MIL-HDBK-419A; FAA-STD-019',
    edition: 'vol. II',
    clause: 'bonding conductors',
    provenance: 'read',
  },
  needs: ['header', 'sections', 'conductors', 'site'],
  check({ header, sections, conductors, site }) {
    const { military, aviation } = claimsOf(header);
    if (!military && !aviation) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const bars = new Set(site.bars.map((b) => b.id));
    const bonds = conductors.filter((c) => c.role === 'bond' && c.ends.some((id) => id !== null && bars.has(id)));
    return bonds.length === 0 ? nothingThere({ sections }, 'conductors') : bonds.map(ofBond);
  },
});

function ofBond({ id, areaM2, lengthM }: ConductorFacts): Verdict {
  const at = [id];
  if (areaM2 === null || lengthM === null)
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'areaM2', value: areaM2, limit: leastM2PerM * lengthM.high, sense: 'least' } as const;
  if (areaM2.low >= leastM2PerM * lengthM.high * (1 - 3e-3))
    return { is: 'met', at, because: { key: 'enough' }, measured };
  if (areaM2.high < leastM2PerM * lengthM.low * (1 - 3e-3))
    return { is: 'not met', at, because: { key: 'small' }, measured };
  return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' }, measured };
}
