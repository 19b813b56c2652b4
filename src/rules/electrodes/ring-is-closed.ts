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
    const verdicts = rings.map((e): Verdict => ofRing(e.id, e.condition === 'open' ? 'no' : e.closed));
    return [...verdicts, ...open.map((r): Verdict => ofRing(r.at, r.why === 'unknown' ? 'unknown' : 'no'))];
  },
});

/** A wire that the owner called closed, or wrote that nobody knows; one typed `closed: no` is a wire, not a ring. */
function isRing(e: Electrode): boolean {
  return e.closed === 'yes' || (e.closed === 'unknown' && e.typed.closed !== undefined);
}

function ofRing(id: string, closed: 'yes' | 'no' | 'unknown'): Verdict {
  if (closed === 'yes') return { is: 'met', at: [id], because: { key: 'closed' } };
  if (closed === 'no') return { is: 'not met', at: [id], because: { key: 'open' } };
  return { is: 'cannot tell', at: [id], because: { key: 'nobody said' }, settle: { key: 'look' } };
}
