import type { Answer } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { isAtMost } from '../../units/interval.ts';
import { mostAsPrinted } from '../as-printed.ts';
import { type LeastSections, reachesSection, type Sized, sectionVerdict } from '../conductors/size-rule.ts';
import type { Verdict } from '../rule.ts';

/** Main conductors of a lightning protection system in the United States: up to 75 ft, printed as 23 m, and above. Square metres, metres. */
export const mainSections = {
  upToM: 22.86,
  low: { copper: 29e-6, aluminium: 50e-6, steel: null, cladSteel: null },
  high: { copper: 58e-6, aluminium: 97e-6, steel: null, cladSteel: null },
} as const satisfies { upToM: number; low: LeastSections; high: LeastSections };

/** Whether a conductor is of main size; 'by height': it hangs on a height that nobody knows. */
export function isMainSize(c: Pick<Sized, 'wire' | 'areaM2'>, heightM: Interval | null): Answer | 'by height' {
  const [low, high] = [reachesSection(c, mainSections.low), reachesSection(c, mainSections.high)];
  const isLow = isLowBuilding(heightM);
  if (isLow !== 'unknown') return isLow === 'yes' ? low : high;
  return high === 'yes' || low !== 'yes' ? low : 'by height';
}

function isLowBuilding(heightM: Interval | null): Answer {
  return heightM === null ? 'unknown' : isAtMost(heightM, mostAsPrinted(mainSections.upToM, 23));
}

/** A height that nobody knows matters only to a section between the two. */
export function mainVerdict(c: Sized, heightM: Interval | null): Verdict {
  const isLow = isLowBuilding(heightM);
  if (isLow === 'yes') return sectionVerdict(c, mainSections.low, 'awg');
  const high = sectionVerdict(c, mainSections.high, 'awg');
  if (isLow === 'no' || high.is !== 'not met') return high;
  const low = sectionVerdict(c, mainSections.low, 'awg');
  if (low.is === 'not met') return low;
  return { is: 'cannot tell', at: [c.id], because: { key: 'height unknown' }, settle: { key: 'measure height' } };
}
