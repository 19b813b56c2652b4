import { isAtLeast, scale } from '../../units/interval.ts';
import { setFields } from '../changes/set-field.ts';
import { onlyFor } from '../electrode-sizes/only-for.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { drivenRods, lengthInSoil, printedShare } from './driven.ts';
import { purposesOf } from './purposes-of.ts';

/** 8 ft in contact with soil. */
const leastM = 2.4384;

export const rodLengthUs = rule({
  id: 'rod-length-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: {
    document: 'NFPA 70',
    edition: '2020',
    clause: '250.52(A)(5), 250.53(A)(4) (250.53(G) to 2017)',
    provenance: 'second-hand',
  },
  limits: [{ key: 'rodLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    // A rod for a communications protector alone may be shorter.
    const rods = drivenRods(facts.electrodes).filter((e) => !onlyFor(purposesOf(e.part, facts), 'communications'));
    if (rods.length === 0) return nothingThere(facts, 'electrodes');
    return rods.map((e): Verdict => {
      const at = [e.id];
      const length = lengthInSoil(e.part);
      if (length === null)
        return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' } };
      const measured = { key: 'rodLengthM', value: length, limit: leastM, sense: 'least' } as const;
      const long = isAtLeast(length, leastM * printedShare);
      if (long === 'yes') return { is: 'met', at, because: { key: 'long enough' }, measured };
      if (long === 'no' && isAtLeast(e.part.lengthM!, leastM * printedShare) === 'yes')
        return {
          is: 'not met',
          at,
          because: { key: 'stands out', values: { outLengthM: scale(e.part.topM!, -1) } },
          ...setFields('electrodes', e.id, { top: '0 in' }),
        };
      if (long === 'no')
        return {
          is: 'not met',
          at,
          because: { key: 'short' },
          measured,
          ...setFields('electrodes', e.id, { length: '8 ft' }),
        };
      return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' }, measured };
    });
  },
});
