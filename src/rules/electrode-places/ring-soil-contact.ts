import type { Electrode } from '../../site/site.ts';
import { divide, type Interval, isAtLeast } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { forLightning } from '../electrode-sizes/for-lightning.ts';
import { routeLength } from '../electrode-sizes/route-length.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { ringsOf } from './rings.ts';

/** Of its length. */
const leastShare = 0.8;

export const ringSoilContact = rule({
  id: 'ring-soil-contact',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '5.4.2.2', provenance: 'second-hand' },
  limits: [{ key: 'contactShare', value: leastShare, sense: 'least' }],
  needs: ['header', 'sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    // With no class claimed it is asked of a ring whose contact somebody spoke of.
    const isClaimed = claimsOf(facts.header).lightningClass !== null;
    const rings = ringsOf(forLightning(facts)).filter((e) => e.part.typed.in_soil !== undefined || isClaimed);
    return rings.length === 0 ? nothingThere(facts, 'electrodes') : rings.map((e) => ofRing(e.part));
  },
});

function ofRing(e: Electrode): Verdict {
  const at = [e.id];
  const value = shareOf(e);
  const enough = value === null ? 'unknown' : isAtLeast(value, leastShare);
  if (value === null || enough === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'contact unknown' }, settle: { key: 'ask' } };
  const measured = { key: 'contactShare', value, limit: leastShare, sense: 'least' } as const;
  if (enough === 'yes') return { is: 'met', at, because: { key: 'in soil' }, measured };
  return { is: 'not met', at, because: { key: 'not in soil' }, measured };
}

/** One that lies in a trench of known depth is in soil unless its owner says how much of it is. */
function shareOf(e: Electrode): Interval | null {
  const whole = e.lengthM ?? routeLength(e);
  if (e.inSoilM === null)
    return e.typed.in_soil === undefined && e.depthM !== null && e.depthM.low > 0 ? { low: 1, high: 1 } : null;
  return whole === null ? null : divide(e.inSoilM, whole);
}
