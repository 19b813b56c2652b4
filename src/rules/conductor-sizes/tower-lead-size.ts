import type { ConductorFacts } from '../../facts/facts.ts';
import { claimsOf } from '../claims.ts';
import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Edition G, as a user read it: 2/0 AWG tinned copper; edition F: 6 AWG. */
const editionG = { copper: 67e-6, aluminium: null, steel: null, cladSteel: null };
const editionF = { ...editionG, copper: 13.3e-6 };

export const towerLeadSize = rule({
  id: 'tower-lead-size',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'TIA-222-G', edition: '2006', clause: 'protective grounding', provenance: 'second-hand' },
  limits: limitsOf(editionG),
  needs: ['header', 'sections', 'conductors', 'site'],
  check({ header, sections, conductors, site }) {
    const edition = claimsOf(header).tower;
    // H was not read; before F nothing was
    if (edition === null || edition === 'H' || edition < 'F')
      return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const towers = new Set(site.supports.filter((s) => /tower/.test(s.kind)).map((s) => s.id));
    const leads = conductors.filter((c) => c.ends.some((id) => id !== null && towers.has(id)));
    return leads.length === 0 ? nothingThere({ sections }, 'conductors') : leads.map((c) => ofLead(c, edition));
  },
});

function ofLead(c: ConductorFacts, edition: string): Verdict {
  if (edition === 'F') return sectionVerdict(c, editionF, 'awg');
  const v = sectionVerdict(c, editionG, 'awg');
  if (edition === 'G' || v.is !== 'not met') return v;
  const least = sectionVerdict(c, editionF, 'awg');
  if (least.is === 'not met') return least;
  return { is: 'cannot tell', at: [c.id], because: { key: 'edition unknown' }, settle: { key: 'ask edition' } };
}
