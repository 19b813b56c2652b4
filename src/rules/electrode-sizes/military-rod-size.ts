import { claimsOf } from '../claims.ts';
import { drivenRods } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';
import { limitsOfRow, rodRow } from './size-row.ts';

const metals = ['copper', 'tinned copper', 'hard-drawn copper', 'copper-clad steel'];
/** 10 ft, 3.05 m, by 3/4 in, copper or copper-clad. */
const row = rodRow(3.048, 3.05, 0.01905, metals);

export const militaryRodSize = rule({
  id: 'military-rod-size',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: {
    document: 'MIL-HDBK-1004/6; TM 5-811-3',
    edition: null,
    clause: 'rods of an electronics facility',
    provenance: 'read',
  },
  limits: limitsOfRow(row),
  needs: ['header', 'sections', 'electrodes'],
  check(facts) {
    if (!claimsOf(facts.header).military) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const rods = drivenRods(facts.electrodes);
    return rods.length === 0 ? nothingThere(facts, 'electrodes') : rods.map((e) => sizeVerdict(e.part, [row]));
  },
});
