import { type Interval, isAtLeast } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { printedShare, rodsPipesPlates } from './driven.ts';
import { type RodPair, rodPairs } from './rod-pairs.ts';

/** 6 ft. */
const leastM = 1.8288;

/** Closer than the clause asks, whatever is not known. */
export const isTooClose = (spacingM: Interval): boolean => isAtLeast(spacingM, leastM * printedShare) === 'no';

/** The doubt about spacings of which nothing is said, as the parent of another about the same rods: one tape settles both. */
export function underUnmeasured(pairs: readonly RodPair[]): { readonly under: string } {
  const open = pairs.filter(({ spacingM, wireM }) => spacingM === null && !(wireM !== null && isTooClose(wireM)));
  return { under: `rod-spacing-minimum:${[...new Set(open.flatMap((p) => p.at))].sort().join('+')}` };
}

export const rodSpacingMinimum = rule({
  id: 'rod-spacing-minimum',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2020', clause: '250.53(A)(3), (B)', provenance: 'second-hand' },
  limits: [{ key: 'spacingLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'electrodes', 'site'],
  check({ sections, electrodes, site }) {
    const pairs = rodPairs(rodsPipesPlates(electrodes), site.conductors);
    if (pairs.length === 0) return nothingThere({ sections }, 'electrodes');
    return pairs.map(({ at, spacingM, wireM }): Verdict => {
      if (wireM !== null && isTooClose(wireM))
        return { is: 'not met', at, because: { key: 'short wire', values: { wireLengthM: wireM } } };
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
