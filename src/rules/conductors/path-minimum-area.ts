import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { iecLeadSections, iecLeadVerdict } from './iec-lead-verdict.ts';
import { sectionVerdict } from './size-rule.ts';

/** What the least lead of a mast is in the United States and Canada: 10 AWG copper and what it has beside (NFPA 70 810.21(H), second-hand). */
const us = { copper: 5.26e-6, aluminium: 8.37e-6, steel: null, cladSteel: 1.04e-6 };

export const pathMinimumArea = rule({
  id: 'path-minimum-area',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'ours', edition: null, clause: null, provenance: 'ours' },
  limits: [
    { key: 'areaM2', value: us.copper, sense: 'least', of: 'copper, United States and Canada' },
    { key: 'areaM2', value: iecLeadSections.copper, sense: 'least', of: 'copper elsewhere' },
  ],
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const onWay = beyondTheLead(facts);
    const found = facts.conductors.filter((c) => onWay.has(c.id));
    if (found.length === 0) return nothingThere(facts, 'conductors');
    return found.map((c) => ofWire(c, !facts.isAmerican));
  },
});

/** A size or metal that nobody knows is asked about where a clause asks it of that wire. */
function ofWire(c: ConductorFacts, isAbroad: boolean): Verdict {
  const v = isAbroad ? iecLeadVerdict(c) : sectionVerdict(c, us);
  if (v.is !== 'cannot tell' || !/^(?:size|metal) unknown$/.test(v.because.key)) return v;
  return { is: 'not applicable', because: { key: 'size unknown' } };
}

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
