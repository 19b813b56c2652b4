import type { SizeUnits } from '../changes/thicker-wire.ts';
import type { Verdict } from '../rule.ts';
import { type LeastSections, type Sized, sectionVerdict } from './size-rule.ts';

/** What earths an antenna, by IEC 60728-11 (second-hand): 16 mm² copper, 25 mm² insulated aluminium, 50 mm² steel. */
export const iecLeadSections: LeastSections = { copper: 16e-6, aluminium: 25e-6, steel: 50e-6, cladSteel: null };

/** The figure for aluminium is one of insulated wire: for bare aluminium the clause has none. `sold` as in `sectionVerdict`. */
export function iecLeadVerdict(c: Sized, sold?: SizeUnits): Verdict {
  const v = sectionVerdict(c, iecLeadSections, sold);
  if (v.is !== 'met' || !/aluminium/.test(c.wire?.metal?.name ?? '') || c.wire?.insulated === 'yes') return v;
  if (c.wire?.insulated === 'no')
    return { is: 'cannot tell', at: v.at, because: { key: 'bare aluminium' }, settle: { key: 'ask' } };
  return { is: 'cannot tell', at: v.at, because: { key: 'cover unknown' }, settle: { key: 'look at cover' } };
}
