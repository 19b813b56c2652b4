import type { ElectrodeFacts } from '../../facts/facts.ts';
import { drivenRods } from '../electrodes/driven.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';
import { onlyFor } from './only-for.ts';
import { underLength } from './under-length.ts';

/** 5/8 in; 1/2 in where it is listed. */
const leastM = 0.015875;
const leastListedM = 0.0127;
/** Trade size 3/4; of iron or steel galvanised, or coated some other way that the soil does not eat. */
const leastPipeM = 0.01905;
const rows = [{ metals: 'any', least: [{ figure: 'diameter', limit: leastM }] }] as const;
const pipeRows = [
  {
    metals: ['galvanised steel', 'stainless steel', 'copper', 'tinned copper', 'copper-clad steel', 'brass', 'bronze'],
    least: [{ figure: 'diameter', limit: leastPipeM }],
  },
] as const;
const listedRows = [{ metals: 'any', least: [{ figure: 'diameter', limit: leastListedM }] }] as const;

export const rodDiameterUs = rule({
  id: 'rod-diameter-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2020', clause: '250.52(A)(5)', provenance: 'second-hand' },
  limits: [
    { key: 'diameterM', value: leastM, sense: 'least', of: 'not listed' },
    { key: 'diameterM', value: leastListedM, sense: 'least', of: 'listed' },
    { key: 'diameterM', value: leastPipeM, sense: 'least', of: 'pipe' },
  ],
  needs: ['sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const rods = drivenRods(facts.electrodes).filter(
      (e) => isSeenRod(e) && !onlyFor(purposesOf(e.part, facts), 'communications'),
    );
    if (rods.length === 0) return nothingThere(facts, 'electrodes');
    return underLength(rods.map(ofRod), rods);
  },
});

/** Of a rod that may not be there nobody can measure the diameter. */
const isSeenRod = ({ part }: ElectrodeFacts) => part.present === 'yes';

/** Between the two figures it hangs on a mark that somebody can read. */
function ofRod({ part }: ElectrodeFacts): Verdict {
  if (part.kind === 'pipe') return sizeVerdict(part, pipeRows);
  const plain = sizeVerdict(part, rows);
  if (plain.is !== 'not met' || part.listed === 'no') return plain;
  const ifListed = sizeVerdict(part, listedRows);
  if (part.listed === 'yes' || ifListed.is !== 'met') return ifListed;
  return { is: 'cannot tell', at: [part.id], because: { key: 'perhaps listed' }, settle: { key: 'read the mark' } };
}
