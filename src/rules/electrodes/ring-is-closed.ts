import type { Electrode } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const ringIsClosed = rule({
  id: 'ring-is-closed',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'ours', edition: null, clause: null, provenance: 'ours' },
  needs: ['sections', 'site', 'bonding'],
  check({ sections, site, bonding }) {
    const rings = site.electrodes.filter((e) => isRing(e) && e.present !== 'no');
    const open = bonding.openRings.filter((r) => !rings.some((e) => e.id === r.at));
    if (rings.length === 0 && open.length === 0) return nothingThere({ sections }, 'electrodes');
    const whyOpen = new Map(bonding.openRings.map((r) => [r.at, r.why]));
    const verdicts = rings.map((e): Verdict => ofRing(e.id, closedBy(e, whyOpen.get(e.id))));
    return [...verdicts, ...open.map((r): Verdict => ofRing(r.at, r.why === 'unknown' ? 'unknown' : 'no'))];
  },
});

/** A wire that the owner called closed, or wrote that nobody knows; one typed `closed: no` is a wire, not a ring. */
function isRing(e: Electrode): boolean {
  return e.closed === 'yes' || (e.closed === 'unknown' && e.typed.closed !== undefined);
}

/** What the owner says, unless its joints say that it is open. */
function closedBy(e: Electrode, why: 'not closed' | 'unknown' | undefined): Electrode['closed'] {
  if (why === 'not closed' || e.condition === 'open') return 'no';
  return why === 'unknown' ? 'unknown' : e.closed;
}

function ofRing(id: string, closed: 'yes' | 'no' | 'unknown'): Verdict {
  if (closed === 'yes') return { is: 'met', at: [id], because: { key: 'closed' } };
  if (closed === 'no') return { is: 'not met', at: [id], because: { key: 'open' } };
  return { is: 'cannot tell', at: [id], because: { key: 'nobody said' }, settle: { key: 'look' } };
}
