import { claimsOf } from '../claims.ts';
import { drivenRods } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';

/** 3/4 in by 10 ft, copper or copper-clad. */
const lengthM = 3.048;
const diameterM = 0.01905;
const metals = ['copper', 'tinned copper', 'hard-drawn copper', 'copper-clad steel'];
const rows = [
  {
    metals,
    least: [
      { figure: 'length', limit: lengthM },
      { figure: 'diameter', limit: diameterM },
    ],
  },
] as const;

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
  limits: [
    { key: 'runLengthM', value: lengthM, sense: 'least' },
    { key: 'diameterM', value: diameterM, sense: 'least' },
  ],
  needs: ['header', 'sections', 'electrodes'],
  check(facts) {
    if (!claimsOf(facts.header).military) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const rods = drivenRods(facts.electrodes);
    return rods.length === 0 ? nothingThere(facts, 'electrodes') : rods.map((e) => sizeVerdict(e.part, rows));
  },
});
