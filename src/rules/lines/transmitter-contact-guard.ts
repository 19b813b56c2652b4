import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { openSendingLeads } from './open-leads.ts';

export const transmitterContactGuard = rule({
  id: 'transmitter-contact-guard',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2008', clause: '810.56', provenance: 'read' },
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const lines = openSendingLeads(site);
    if (lines.length === 0) return nothingThere({ sections }, 'lines');
    return lines.map(({ id, guarded }): Verdict => {
      const at = [id];
      if (guarded === 'yes') return { is: 'met', at, because: { key: 'guarded' } };
      if (guarded === 'no')
        return { is: 'not met', at, because: { key: 'open' }, ...setFields('lines', id, { guarded: 'yes' }) };
      return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'look' } };
    });
  },
});
