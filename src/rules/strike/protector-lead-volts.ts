import type { ArresterFacts, ConductorFacts } from '../../facts/facts.ts';
import type { Bar } from '../../site/site.ts';
import { type Interval, isAtMost, scale } from '../../units/interval.ts';
import { howToMeasureLead } from '../lines/how-to-measure-lead.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Inductance of a lead, henry per metre, and the steepness of a surge of 8 kA 8/20, ampere per second: 1 kV for each metre. */
const leadHPerM = 1e-6;
const riseAPerS = 1e9;
/** Half a metre of lead: as much again as half of what a usual protector lets through. */
const mostV = 500;

export const protectorLeadVolts = rule({
  id: 'protector-lead-volts',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'IEC 61643-12, leads of a protector: half a metre in all, 1 kV a metre',
    edition: null,
    clause: null,
    provenance: 'memory',
  },
  needs: ['sections', 'arresters', 'conductors', 'site'],
  check({ sections, arresters, conductors, site }) {
    const tied = arresters.filter((a) => a.bonded !== 'no');
    if (tied.length === 0) return nothingThere({ sections }, 'arresters');
    return tied.map((a) => ofArrester(a, conductors, site.bars));
  },
});

function ofArrester(a: ArresterFacts, conductors: readonly ConductorFacts[], bars: readonly Bar[]): Verdict {
  const at = [a.id];
  const isOnBar = bars.some((b) => b.id === a.part.on?.part);
  if (isOnBar && a.part.leadM === null && a.part.typed.lead === undefined)
    return { is: 'met', at, because: { key: 'bolted' } };
  const leadsH = a.part.leadM !== null ? [scale(a.part.leadM, leadHPerM)] : leadsOf(a, conductors);
  const known = leadsH.filter((henry) => henry !== null);
  const key = howToMeasureLead(a.part);
  if (known.length === 0) return { is: 'cannot tell', at, because: { key: 'lead unknown' }, settle: { key } };
  const leadV = scale(shortest(known), riseAPerS);
  const measured = { key: 'leadV', value: leadV, limit: mostV, sense: 'most' } as const;
  // a typed lead is found too long by the rule of practice already
  const under = a.part.leadM === null ? {} : { under: `arrester-lead-short:${a.id}` };
  const isShort = isAtMost(leadV, mostV * (1 + 1e-9));
  if (isShort === 'yes') return { is: 'met', at, because: { key: 'short' }, measured };
  if (isShort === 'no' && known.length === leadsH.length)
    return { is: 'not met', at, because: { key: 'long', values: { leadV } }, measured, ...under };
  return { is: 'cannot tell', at, because: { key: 'lead unknown' }, settle: { key }, measured, ...under };
}

/** Of the wires that land on it, henry. */
function leadsOf({ id }: ArresterFacts, conductors: readonly ConductorFacts[]): readonly (Interval | null)[] {
  const own = conductors.filter((c) => c.ends.includes(id) || c.passes.includes(id));
  return own.map((c) => c.inductanceH ?? (c.lengthM === null ? null : scale(c.lengthM, leadHPerM)));
}

function shortest(all: readonly Interval[]): Interval {
  return { low: Math.min(...all.map((h) => h.low)), high: Math.min(...all.map((h) => h.high)) };
}
