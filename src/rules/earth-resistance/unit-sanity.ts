import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** A rod alone reads more in any soil but salt water. */
const leastOhm = 1;

export const unitSanity = rule({
  id: 'unit-sanity',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'ours', edition: null, clause: null, provenance: 'ours' },
  limits: [{ key: 'resistanceOhm', value: leastOhm, sense: 'least', of: 'one rod alone' }],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    // Sizes and lengths that cannot be are asked about while the file is read.
    const read = electrodes.filter((e) => e.part.kind === 'rod' && e.measuredOhm !== null && !e.measuredOhm.overRange);
    if (read.length === 0) return nothingThere({ sections }, 'electrodes');
    return read.map((e): Verdict => {
      const value = e.measuredOhm!.ohm;
      const measured = { key: 'resistanceOhm', value, limit: leastOhm, sense: 'least' } as const;
      if (value.high < leastOhm) return { is: 'not met', at: [e.id], because: { key: 'too low to be' }, measured };
      if (value.low >= leastOhm) return { is: 'met', at: [e.id], because: { key: 'can be' }, measured };
      return { is: 'cannot tell', at: [e.id], because: { key: 'wide' }, settle: { key: 'measure alone' }, measured };
    });
  },
});
