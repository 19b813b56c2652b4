import { isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Times the number of electrodes of the system. */
const mostOhm = 10;

export const electrode10nOhm = rule({
  id: 'electrode-10n-ohm',
  family: 'practice',
  severity: 'advice',
  codeSets: ['uk'],
  source: { document: 'BS 6651; BS 7430', edition: null, clause: 'each electrode alone', provenance: 'second-hand' },
  limits: [{ key: 'resistanceOhm', value: mostOhm, sense: 'most', of: 'each of so many electrodes' }],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const read = electrodes.filter((e) => e.measuredOhm !== null && e.electrodesInGroup > 0 && e.part.kind !== 'rods');
    if (read.length === 0) return nothingThere({ sections }, 'electrodes');
    return read.map((e): Verdict => {
      const at = [e.id];
      if (e.measuredOhm!.overRange) return { is: 'not met', at, because: { key: 'over range' } };
      const limit = mostOhm * e.electrodesInGroup;
      const measured = { key: 'resistanceOhm', value: e.measuredOhm!.ohm, limit, sense: 'most' } as const;
      const low = isAtMost(e.measuredOhm!.ohm, limit);
      if (low === 'yes') return { is: 'met', at, because: { key: 'low' }, measured };
      if (low === 'no') return { is: 'not met', at, because: { key: 'high' }, measured };
      return { is: 'cannot tell', at, because: { key: 'wide' }, settle: { key: 'measure it' }, measured };
    });
  },
});
