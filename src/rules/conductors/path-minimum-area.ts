import type { Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sectionVerdict } from './size-rule.ts';

/** What the least lead of a mast is in each country: 10 AWG copper (NFPA 70 810.21(H)), 16 mm² (IEC 60728-11); second-hand. */
const us = { copper: 5.26e-6, aluminium: 8.37e-6, steel: null, cladSteel: 1.04e-6 };
const iec = { copper: 16e-6, aluminium: 25e-6, steel: 50e-6, cladSteel: null };

export const pathMinimumArea = rule({
  id: 'path-minimum-area',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'ours', edition: null, clause: null, provenance: 'ours' },
  limits: [
    { key: 'areaM2', value: us.copper, sense: 'least', of: 'copper, United States and Canada' },
    { key: 'areaM2', value: iec.copper, sense: 'least', of: 'copper elsewhere' },
  ],
  needs: ['header', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const onWay = beyondTheLead(facts);
    const found = facts.conductors.filter((c) => onWay.has(c.id));
    const isAbroad = !['us', 'ca', 'unknown'].includes(facts.header.region);
    if (found.length === 0) return nothingThere(facts, 'conductors');
    // A size that nobody knows is asked about where a clause asks it of that wire.
    return found.map((c): Verdict => {
      const v = sectionVerdict(c, isAbroad ? iec : us);
      return v.is === 'cannot tell' ? { is: 'not applicable', because: { key: 'size unknown' } } : v;
    });
  },
});

/** Wires on the way of a mast or antenna to earth that are not its own lead: of the lead the clause itself asks. */
function beyondTheLead({
  bonding,
  conductors,
  site,
}: Pick<Facts, 'bonding' | 'conductors' | 'site'>): ReadonlySet<string> {
  const struck = new Set([...site.antennas, ...site.supports].map((p) => p.id));
  const ways = bonding.ways.filter((w) => struck.has(w.part) && w.toElectrode !== null);
  const pieces = new Set(ways.flatMap((w) => w.toElectrode!.pieces.map((p) => p.part)));
  const asked = new Set(['mast lead', 'arrester lead', 'down conductor', 'electrode tie']);
  return new Set(conductors.filter((c) => pieces.has(c.id) && !asked.has(c.role)).map((c) => c.id));
}
