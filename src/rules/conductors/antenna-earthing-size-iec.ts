import type { ConductorFacts } from '../../facts/facts.ts';
import { facadeExempt } from '../facade-exempt.ts';
import { nothingThere } from '../looked-at.ts';
import { indoorMasts } from '../masts/indoor-masts.ts';
import { rule, type Verdict } from '../rule.ts';
import { limitsOf, sectionVerdict } from './size-rule.ts';

/** 16 mm² copper, 25 mm² insulated aluminium, 50 mm² steel. */
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
  limits: limitsOf(least),
  needs: ['sections', 'conductors', 'site'],
  check({ sections, conductors, site }) {
    const indoors = indoorMasts(site);
    const leads = conductors.filter(
      (c) =>
        (c.role === 'mast lead' || c.role === 'down conductor') && !c.ends.some((id) => id !== null && indoors.has(id)),
    );
    if (leads.length === 0) return nothingThere({ sections }, 'conductors');
    const exempt = facadeExempt(site);
    return leads.map((c): Verdict => {
      const v = ofLead(c);
      const zone = c.ends.flatMap((id) => (id === null ? [] : (exempt.get(id) ?? [])))[0] ?? 'no';
      if (v.is !== 'not met' || zone === 'no') return v;
      if (zone === 'yes') return { is: 'met', at: v.at, because: { key: 'exempt' } };
      return { is: 'cannot tell', at: v.at, because: { key: 'on facade' }, settle: { key: 'measure facade' } };
    });
  },
});

/** The figure for aluminium is one of insulated wire; for bare aluminium the clause has none. */
function ofLead(c: ConductorFacts): ReturnType<typeof sectionVerdict> {
  const v = sectionVerdict(c, least, 'mm2');
  if (v.is !== 'met' || !/aluminium/.test(c.wire?.metal?.name ?? '') || c.wire?.insulated === 'yes') return v;
  if (c.wire?.insulated === 'no')
    return { is: 'cannot tell', at: v.at, because: { key: 'bare aluminium' }, settle: { key: 'ask' } };
  return { is: 'cannot tell', at: v.at, because: { key: 'cover unknown' }, settle: { key: 'look at cover' } };
}
