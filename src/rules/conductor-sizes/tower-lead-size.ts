import type { ConductorFacts } from '../../facts/facts.ts';
import { setFields } from '../changes/set-field.ts';
import { claimsOf } from '../claims.ts';
import { type LeastSections, limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { leadsOf } from '../masts/leads-of.ts';
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
    const towers = site.supports.filter((s) => /tower/.test(s.kind) && s.present !== 'no');
    const landing = new Set(towers.flatMap((t) => leadsOf(t.id, site)).map((l) => l.conductor.id));
    const leads = conductors.filter((c) => landing.has(c.id));
    return leads.length === 0 ? nothingThere({ sections }, 'conductors') : leads.map((c) => ofLead(c, edition));
  },
});

function ofLead(c: ConductorFacts, edition: string): Verdict {
  if (edition === 'F') return tinnedVerdict(c, editionF, '6 AWG tinned copper');
  const v = tinnedVerdict(c, editionG, '2/0 AWG tinned copper');
  if (edition === 'G' || v.is !== 'not met') return v;
  const least = tinnedVerdict(c, editionF, '6 AWG tinned copper');
  if (least.is === 'not met') return least;
  return { is: 'cannot tell', at: [c.id], because: { key: 'edition unknown' }, settle: { key: 'ask edition' } };
}

/** Plain copper beside the zinc of a tower eats it: the standard has tinned copper. */
function tinnedVerdict(c: ConductorFacts, least: LeastSections, wire: string): Verdict {
  const v = sectionVerdict(c, least);
  const change = setFields('conductors', c.id, { wire });
  if (v.is === 'not met') return { ...v, ...change };
  if (v.is !== 'met' || c.wire?.metal?.name === 'tinned copper') return v;
  return { is: 'not met', at: [c.id], because: { key: 'not tinned' }, ...change };
}
