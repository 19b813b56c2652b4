import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { claimsOf } from '../claims.ts';
import { facadeExempt } from '../facade-exempt.ts';
import { mayStandApart } from '../lightning/stands-apart.ts';
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
  needs: ['header', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const { sections, conductors, site } = facts;
    const isAsked = leadsFrom(facts);
    const leads = conductors.filter(isAsked);
    if (leads.length === 0) return nothingThere({ sections }, 'conductors');
    const exempt = facadeExempt(site);
    const mayBeApart = mayStandApart(facts);
    return leads.map((c): Verdict => {
      const v = iecLeadVerdict(c, 'mm2');
      if (v.is !== 'not met') return v;
      if (c.ends.some((id) => mayBeApart.has(id ?? '')))
        return { is: 'cannot tell', at: v.at, because: { key: 'under terminals' }, settle: { key: 'ask designer' } };
      const zone = c.ends.flatMap((id) => (id === null ? [] : (exempt.get(id) ?? [])))[0] ?? 'no';
      if (zone === 'no') return v;
      if (zone === 'yes') return { is: 'met', at: v.at, because: { key: 'exempt' } };
      return { is: 'cannot tell', at: v.at, because: { key: 'on facade' }, settle: { key: 'measure facade' } };
    });
  },
});

/** Leads of outdoor masts; what a lightning protection leads down is asked by down-conductor-size-iec. */
function leadsFrom({ header, site }: Pick<Facts, 'header' | 'site'>): (c: ConductorFacts) => boolean {
  const indoors = indoorMasts(site);
  const terminals = new Set(
    site.supports.filter((s) => s.kind === 'air terminal' && s.present !== 'no').map((s) => s.id),
  );
  const isProtected = claimsOf(header).lightning || terminals.size > 0;
  const outdoors = [...site.antennas, ...site.supports].map((p) => p.id).filter((id) => !terminals.has(id));
  const own = new Set(isProtected ? [] : outdoors);
  return ({ role, ends }) => {
    if (ends.some((id) => indoors.has(id ?? ''))) return false;
    return role === 'mast lead' || (role === 'down conductor' && ends.some((id) => own.has(id ?? '')));
  };
}
