import { isOfBuilding, ringsOf } from '../electrode-places/rings.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';

/** 2 AWG; 20 ft, printed as 6.0 m too. */
const areaM2 = 33.6e-6;
const lengthM = 6.096;
const metals = ['copper', 'tinned copper', 'hard-drawn copper'];
const rows = [
  {
    metals,
    least: [
      { figure: 'wire', limit: areaM2 },
      { figure: 'length', limit: lengthM, printed: 6 },
    ],
  },
] as const;

export const ringUs = rule({
  id: 'ring-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.52(A)(4)', provenance: 'memory' },
  limits: [
    { key: 'areaM2', value: areaM2, sense: 'least' },
    { key: 'runLengthM', value: lengthM, sense: 'least' },
  ],
  needs: ['sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const rings = ringsOf(facts.electrodes).filter((e) => isOfBuilding(e, facts));
    if (rings.length === 0) return nothingThere(facts, 'electrodes');
    return rings.map(({ part }): Verdict => {
      if (part.wire?.insulated === 'yes') return { is: 'not met', at: [part.id], because: { key: 'covered' } };
      return sizeVerdict(part, rows);
    });
  },
});
