import { type Interval, isAtLeast } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { printedShare, rodsPipesPlates } from './driven.ts';
import { rodPairs } from './rod-pairs.ts';

/** 6 ft. */
const leastM = 1.8288;

/** Closer than the clause asks, whatever is not known. */
export const isTooClose = (spacingM: Interval): boolean => isAtLeast(spacingM, leastM * printedShare) === 'no';

export const rodSpacingMinimum = rule({
  id: 'rod-spacing-minimum',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2020', clause: '250.53(A)(3), (B)', provenance: 'second-hand' },
  limits: [{ key: 'spacingLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const pairs = rodPairs(rodsPipesPlates(electrodes));
    if (pairs.length === 0) return nothingThere({ sections }, 'electrodes');
    return pairs.map(({ at, spacingM }): Verdict => {
      if (spacingM === null)
        return { is: 'cannot tell', at, because: { key: 'spacing unknown' }, settle: { key: 'measure it' } };
      const measured = { key: 'spacingLengthM', value: spacingM, limit: leastM, sense: 'least' } as const;
      const far = isAtLeast(spacingM, leastM * printedShare);
      if (far === 'yes') return { is: 'met', at, because: { key: 'far enough' }, measured };
      if (isTooClose(spacingM)) return { is: 'not met', at, because: { key: 'near' }, measured };
      return { is: 'cannot tell', at, because: { key: 'spacing unknown' }, settle: { key: 'measure it' }, measured };
    });
  },
});
