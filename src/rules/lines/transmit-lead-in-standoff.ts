import type { Line } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { openSendingLeads } from './open-leads.ts';

/** How far an open lead-in of a sender is held off a wall, metres (3 in as printed). */
const leastStandoffM = 0.075;

export const transmitLeadInStandoff = rule({
  id: 'transmit-lead-in-standoff',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2008', clause: '810.54, 810.55', provenance: 'read' },
  limits: [{ key: 'standoffLengthM', value: leastStandoffM, sense: 'least' }],
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const lines = openSendingLeads(site);
    return lines.length === 0 ? nothingThere({ sections }, 'lines') : lines.map(ofLine);
  },
});

function ofLine({ id, standoffM }: Line): Verdict {
  const at = [id];
  if (standoffM == null) return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'look' } };
  const measured = { key: 'standoffLengthM', value: standoffM, limit: leastStandoffM, sense: 'least' } as const;
  const enough = isAtLeast(standoffM, leastStandoffM);
  if (enough === 'yes') return { is: 'met', at, because: { key: 'held off' }, measured };
  if (enough === 'no')
    return {
      is: 'not met',
      at,
      because: { key: 'near the wall' },
      measured,
      ...setFields('lines', id, { standoff: '3 in' }),
    };
  return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'look' } };
}
