import type { ConductorFacts } from '../../facts/facts.ts';
import { isEnclosed } from '../conductor-runs/enclosure.ts';
import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { facadeExempt } from '../facade-exempt.ts';
import { nothingThere } from '../looked-at.ts';
import { indoorMasts } from '../masts/indoor-masts.ts';
import { rule, type Verdict } from '../rule.ts';
import { antennaLeads } from './leads-of.ts';

/** 4 mm² copper in the open, 2.5 mm² protected. */
const exposed = { copper: 4e-6, aluminium: null, steel: null, cladSteel: null };
const sheltered = { ...exposed, copper: 2.5e-6 };

export const antennaBondingSizeIec = rule({
  id: 'antenna-bonding-size-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: {
    document: 'IEC 60728-11',
    edition: '2016, 2023',
    clause: 'equipotential bonding',
    provenance: 'second-hand',
  },
  limits: [...limitsOf(exposed), { key: 'areaM2', value: sheltered.copper, sense: 'least', of: 'copper, protected' }],
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const exempt = facadeExempt(facts.site);
    const indoors = indoorMasts(facts.site);
    const bonds = antennaLeads(facts).filter(
      (c) =>
        c.role === 'arrester lead' || c.ends.some((id) => id !== null && (exempt.get(id) === 'yes' || indoors.has(id))),
    );
    return bonds.length === 0 ? nothingThere(facts, 'conductors') : bonds.map(ofBond);
  },
});

function ofBond(c: ConductorFacts): Verdict {
  const { enclosure, runs } = c.part;
  if (isEnclosed(enclosure) || (runs !== null && runs !== 'open')) return sectionVerdict(c, sheltered, 'mm2');
  const v = sectionVerdict(c, exposed, 'mm2');
  if (v.is !== 'not met' || enclosure !== null || runs === 'open') return v;
  const least = sectionVerdict(c, sheltered, 'mm2');
  if (least.is === 'not met') return least;
  return { is: 'cannot tell', at: [c.id], because: { key: 'shelter unknown' }, settle: { key: 'look' } };
}
