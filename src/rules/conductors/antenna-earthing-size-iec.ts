import { facadeExempt } from '../facade-exempt.ts';
import { nothingThere } from '../looked-at.ts';
import { indoorMasts } from '../masts/indoor-masts.ts';
import { rule, type Verdict } from '../rule.ts';
import { iecLeadSections, iecLeadVerdict } from './iec-lead-verdict.ts';
import { limitsOf } from './size-rule.ts';

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
  limits: limitsOf(iecLeadSections),
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
      const v = iecLeadVerdict(c, 'mm2');
      const zone = c.ends.flatMap((id) => (id === null ? [] : (exempt.get(id) ?? [])))[0] ?? 'no';
      if (v.is !== 'not met' || zone === 'no') return v;
      if (zone === 'yes') return { is: 'met', at: v.at, because: { key: 'exempt' } };
      return { is: 'cannot tell', at: v.at, because: { key: 'on facade' }, settle: { key: 'measure facade' } };
    });
  },
});
