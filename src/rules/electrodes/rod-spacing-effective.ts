import { type Interval, isAtLeast } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { drivenRods, printedShare, rodsPipesPlates } from './driven.ts';
import { rodPairs } from './rod-pairs.ts';
import { isTooClose, underUnmeasured } from './rod-spacing-minimum.ts';

/** Rod lengths between paralleled rods from which each adds nearly its whole share. */
const lengthsApart = 2;

export const rodSpacingEffective = rule({
  id: 'rod-spacing-effective',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'NFPA 70; Army preventive maintenance monthly 599',
    edition: '2011; 2002',
    clause: '250.53(A)(3) note; pages 41, 42',
    provenance: 'read',
  },
  needs: ['sections', 'electrodes', 'site'],
  check({ sections, electrodes, site }) {
    const pairs = rodPairs(drivenRods(electrodes), site.conductors);
    const asked = rodPairs(rodsPipesPlates(electrodes), site.conductors);
    if (pairs.length === 0) return nothingThere({ sections }, 'electrodes');
    return pairs.map(({ at, spacingM, wireM, lengthM }): Verdict => {
      if (wireM !== null && lengthM !== null && isNearer(wireM, lengthM))
        return {
          is: 'not met',
          at,
          because: { key: 'short wire', values: { wireLengthM: wireM } },
          ...underMinimum(at, wireM),
        };
      if (spacingM === null || lengthM === null) {
        const under = spacingM === null ? underUnmeasured(asked) : {};
        return { is: 'cannot tell', at, because: { key: 'spacing unknown' }, settle: { key: 'measure it' }, ...under };
      }
      const limit = lengthsApart * lengthM.high;
      const measured = { key: 'spacingLengthM', value: spacingM, limit, sense: 'least' } as const;
      if (isAtLeast(spacingM, limit * printedShare) === 'yes')
        return { is: 'met', at, because: { key: 'far enough' }, measured };
      if (isNearer(spacingM, lengthM)) {
        return { is: 'not met', at, because: { key: 'near' }, measured, ...underMinimum(at, spacingM) };
      }
      return { is: 'cannot tell', at, because: { key: 'spacing unknown' }, settle: { key: 'measure it' }, measured };
    });
  },
});

/** Nearer than asked, whatever is not known. */
const isNearer = (spacingM: Interval, lengthM: Interval): boolean =>
  isAtLeast(spacingM, lengthsApart * lengthM.low * printedShare) === 'no';

/** What is closer than the code's own least has that finding, where the code asks it. */
function underMinimum(at: readonly string[], spacingM: Interval): { readonly under?: string } {
  return isTooClose(spacingM) ? { under: `rod-spacing-minimum:${at.join('+')}` } : {};
}
