import type { Facts } from '../../facts/facts.ts';
import type { Electrode } from '../../site/site.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';

/** 2 AWG; 20 ft. */
const areaM2 = 33.6e-6;
const lengthM = 6.096;
const metals = ['copper', 'tinned copper', 'hard-drawn copper'];
const rows = [
  {
    metals,
    least: [
      { figure: 'wire', limit: areaM2 },
      { figure: 'length', limit: lengthM },
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
    const rings = facts.electrodes.filter(
      (e) => e.part.kind === 'buried wire' && e.part.closed === 'yes' && isOfBuilding(e.part, facts),
    );
    if (rings.length === 0) return nothingThere(facts, 'electrodes');
    return rings.map(({ part }): Verdict => {
      if (part.wire?.insulated === 'yes') return { is: 'not met', at: [part.id], because: { key: 'covered' } };
      return sizeVerdict(part, rows);
    });
  },
});

/** A ring round a tower is no ground ring of the clause, which goes round the building. */
function isOfBuilding(e: Electrode, facts: Pick<Facts, 'site' | 'conductors'>): boolean {
  const purposes = purposesOf(e, facts);
  return purposes.size === 0 || purposes.has('service');
}
