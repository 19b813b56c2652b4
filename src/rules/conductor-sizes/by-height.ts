import type { Interval } from '../../units/interval.ts';
import { isAtMost } from '../../units/interval.ts';
import { type LeastSections, type Sized, sectionVerdict } from '../conductors/size-rule.ts';
import type { Verdict } from '../rule.ts';

/** Main conductors of a lightning protection system in the United States: up to 75 ft, and above. Square metres, metres. */
export const mainSections = {
  upToM: 22.86,
  low: { copper: 29e-6, aluminium: 50e-6, steel: null, cladSteel: null },
  high: { copper: 58e-6, aluminium: 97e-6, steel: null, cladSteel: null },
} as const satisfies { upToM: number; low: LeastSections; high: LeastSections };

/** A height that nobody knows matters only to a section between the two. */
export function mainVerdict(c: Sized, heightM: Interval | null): Verdict {
  const isLow = heightM === null ? 'unknown' : isAtMost(heightM, mainSections.upToM * 1.002);
  if (isLow === 'yes') return sectionVerdict(c, mainSections.low, 'awg');
  const high = sectionVerdict(c, mainSections.high, 'awg');
  if (isLow === 'no' || high.is !== 'not met') return high;
  const low = sectionVerdict(c, mainSections.low, 'awg');
  if (low.is === 'not met') return low;
  return { is: 'cannot tell', at: [c.id], because: { key: 'height unknown' }, settle: { key: 'measure height' } };
}
