import type { Electrode } from '../../site/site.ts';
import { claimsOf } from '../claims.ts';
import { drivenRods, lengthInSoil } from '../electrodes/driven.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';
import { limitsOfRow, rodRow } from './size-row.ts';

/** 5/8 in by 10 ft, 3.0 m, all of it in the soil. */
const row = rodRow(3.048, 3, 0.015875);

export const towerRodSize = rule({
  id: 'tower-rod-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'TIA-222-G', edition: '2006', clause: 'protective grounding', provenance: 'second-hand' },
  limits: limitsOfRow(row),
  needs: ['header', 'sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    // Edition F asks for no such length; H was not read.
    const { tower } = claimsOf(facts.header);
    if (tower === null || tower < 'G') return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const rods = drivenRods(facts.electrodes).filter((e) => purposesOf(e.part, facts).has('tower'));
    if (rods.length === 0) return nothingThere(facts, 'electrodes');
    return rods.map((e) => ofRod(e.part, tower === 'G'));
  },
});

/** All of its length is asked in the soil. What another edition asks nobody can tell who has not seen it. */
function ofRod(e: Electrode, isEditionKnown: boolean): Verdict {
  if (!isEditionKnown)
    return { is: 'cannot tell', at: [e.id], because: { key: 'edition unknown' }, settle: { key: 'look it up' } };
  return sizeVerdict({ ...e, lengthM: lengthInSoil(e) }, [row]);
}
