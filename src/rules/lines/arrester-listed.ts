import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { antennaUnits } from './antenna-units.ts';

export const arresterListed = rule({
  id: 'arrester-listed',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2014', clause: '810.6, 810.7', provenance: 'second-hand' },
  since: 2014,
  needs: ['sections', 'arresters'],
  check({ sections, arresters }) {
    const units = antennaUnits(arresters);
    if (units.length === 0) return nothingThere({ sections }, 'arresters');
    return units.map(({ id, part: { listed } }): Verdict => {
      if (listed === 'yes') return { is: 'met', at: [id], because: { key: 'listed' } };
      if (listed === 'no') return { is: 'not met', at: [id], because: { key: 'not listed' } };
      return { is: 'cannot tell', at: [id], because: { key: 'nobody said' }, settle: { key: 'look' } };
    });
  },
});
