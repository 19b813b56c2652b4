import { isAtLeast } from '../../units/interval.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { claimsOf } from '../claims.ts';
import { drivenRods, saidTopM } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 6 in, 0.15 m (Army); 1 ft, 0.3 m (aviation; from memory). */
const armyM = 0.1524;
const aviationM = 0.3048;
const leastOf = { army: leastAsPrinted(armyM, 0.15), aviation: leastAsPrinted(aviationM, 0.3) };

export const rodTopDepthMilitary = rule({
  id: 'rod-top-depth-military',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: {
    document: 'TM 5-811-3; FAA-STD-019',
    edition: null,
    clause: 'depth of the top of a rod',
    provenance: 'read',
  },
  limits: [
    { key: 'depthM', value: armyM, sense: 'least', of: 'military' },
    { key: 'depthM', value: aviationM, sense: 'least', of: 'aviation' },
  ],
  needs: ['header', 'sections', 'electrodes'],
  check(facts) {
    const claims = claimsOf(facts.header);
    if (!claims.military && !claims.aviation) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const rods = drivenRods(facts.electrodes);
    if (rods.length === 0) return nothingThere(facts, 'electrodes');
    const [limit, least] = claims.aviation ? [aviationM, leastOf.aviation] : [armyM, leastOf.army];
    return rods.map(({ id, part }): Verdict => {
      const at = [id];
      const value = saidTopM(part);
      if (value === null)
        return { is: 'cannot tell', at, because: { key: 'top unknown' }, settle: { key: 'measure it' } };
      const measured = { key: 'depthM', value, limit, sense: 'least' } as const;
      const deep = isAtLeast(value, least);
      if (deep === 'yes') return { is: 'met', at, because: { key: 'deep' }, measured };
      if (deep === 'no') return { is: 'not met', at, because: { key: 'shallow' }, measured };
      return { is: 'cannot tell', at, because: { key: 'top unknown' }, settle: { key: 'measure it' } };
    });
  },
});
