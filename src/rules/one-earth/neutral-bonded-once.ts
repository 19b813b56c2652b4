import type { Equipment } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const neutralBondedOnce = rule({
  id: 'neutral-bonded-once',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us', 'ca'],
  source: { document: 'NFPA 70', edition: null, clause: '250.24, 250.142', provenance: 'read' },
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const panels = site.equipment.filter((e) => e.kind === 'sub-panel' && e.present !== 'no');
    const sources = site.equipment.filter((e) => e.kind === 'service panel' || e.kind === 'meter box');
    if (panels.length === 0 && sources.length <= 1) return nothingThere({ sections }, 'equipment');
    const twice = sources.filter((e) => e.neutralBonded === 'yes').length > 1 ? sources.slice(1) : [];
    return [
      ...panels.map(ofSubPanel),
      ...twice.map((e): Verdict => ({ is: 'not met', at: [e.id], because: { key: 'bonded again' } })),
    ];
  },
});

function ofSubPanel(e: Equipment): Verdict {
  if (e.neutralBonded === 'no') return { is: 'met', at: [e.id], because: { key: 'kept apart' } };
  if (e.neutralBonded === 'yes') return { is: 'not met', at: [e.id], because: { key: 'bonded again' } };
  return { is: 'cannot tell', at: [e.id], because: { key: 'nobody said' }, settle: { key: 'open it' } };
}
