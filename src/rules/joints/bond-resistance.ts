import type { Facts } from '../../facts/facts.ts';
import type { StatedOhm } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { rule, type Verdict } from '../rule.ts';
import { lookAtJoint } from './behind-cover.ts';

/** 1 milliohm (MIL-STD-188-124B); 5 milliohm for bonds of conduit and trays. */
const mostOhm = 1e-3;
const mostOfConduitOhm = 5e-3;

export const bondResistance = rule({
  id: 'bond-resistance',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: {
    document: 'MIL-STD-188-124B; MIL-HDBK-419A',
    edition: 'vol. II',
    clause: 'bond resistance',
    provenance: 'memory',
  },
  limits: [
    { key: 'resistanceOhm', value: mostOhm, sense: 'most' },
    { key: 'resistanceOhm', value: mostOfConduitOhm, sense: 'most', of: 'conduit' },
  ],
  needs: ['header', 'joints', 'site'],
  check(facts) {
    if (!claimsOf(facts.header).military) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const read = measuredJoints(facts).map(([id, ohm]) => ofBond(id, ohm, facts));
    return read.length > 0 ? read : [{ is: 'not looked at', because: { key: 'nobody said' } }];
  },
});

/** What an instrument read on a joint, and what its owner states of one. */
function measuredJoints({ site }: Pick<Facts, 'site'>): readonly (readonly [string, StatedOhm])[] {
  const readings = site.readings.filter((r) => r.kind === 'joint');
  const read = readings.flatMap((r) => (r.on === null || r.reads === null ? [] : [[r.on.text, r.reads] as const]));
  const stated = site.joints.flatMap((j) => (j.resistance === null ? [] : [[j.id, j.resistance] as const]));
  return [...read, ...stated];
}

function limitAt(id: string, { joints, site }: Pick<Facts, 'joints' | 'site'>): number {
  const on = joints.find((j) => j.id === id)?.on ?? null;
  const kind = site.metalwork.find((m) => m.id === on)?.kind ?? '';
  return kind === 'conduit' || kind === 'cable tray' ? mostOfConduitOhm : mostOhm;
}

function ofBond(id: string, { ohm, overRange }: StatedOhm, facts: Pick<Facts, 'joints' | 'site'>): Verdict {
  const at = [id];
  const limit = limitAt(id, facts);
  if (overRange) return { is: 'not met', at, because: { key: 'high' } };
  const measured = { key: 'resistanceOhm', value: ohm, limit, sense: 'most' } as const;
  const low = isAtMost(ohm, limit);
  if (low === 'yes') return { is: 'met', at, because: { key: 'low' }, measured };
  if (low === 'no') return { is: 'not met', at, because: { key: 'high' }, measured };
  const joint = facts.joints.find((j) => j.id === id);
  const key = joint === undefined ? 'look' : lookAtJoint(joint, facts.site);
  return { is: 'cannot tell', at, because: { key: 'not exact' }, settle: { key }, measured };
}
