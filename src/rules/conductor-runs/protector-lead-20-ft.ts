import type { Answer } from '../../site/parts.ts';
import type { Site } from '../../site/site.ts';
import { type Interval, isAtMost } from '../../units/interval.ts';
import { communicationsLeads, communicationsProtectors } from '../conductor-sizes/leads-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 20 ft, printed as 6.0 m. */
const mostM = 6.096;

export const protectorLead20Ft = rule({
  id: 'protector-lead-20-ft',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2020', clause: '800.100(A)(4)', provenance: 'second-hand' },
  clauses: [
    { from: 1999, clause: '800.100(A)(4), 820.100(A)(4)' },
    { from: 2020, clause: '800.100(A)(4)' },
  ],
  limits: [{ key: 'runLengthM', value: mostM, sense: 'most' }],
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const leads = communicationsLeads(facts);
    const led = new Set(leads.flatMap((c) => [...c.ends, ...c.passes]));
    const protectors = communicationsProtectors(facts.site);
    // a protector whose lead is typed on itself
    const own = facts.site.arresters.filter((a) => protectors.has(a.id) && a.leadM !== null && !led.has(a.id));
    const all = [
      ...leads.map((c): Lead => [c.id, c.lengthM, [...c.ends, ...c.passes]]),
      ...own.map((a): Lead => [a.id, a.leadM, [a.id]]),
    ];
    if (all.length === 0) return nothingThere(facts, 'arresters');
    const asked = all.flatMap(([id, lengthM, meets]) => {
      const dwelling = isDwelling(facts.site, meets);
      return dwelling === 'no' ? [] : [ofLead(id, lengthM, dwelling)];
    });
    return asked.length > 0 ? asked : [{ is: 'not applicable', because: { key: 'no dwelling' } }];
  },
});

type Lead = readonly [id: string, lengthM: Interval | null, meets: readonly (string | null)[]];

/** Whether the protector or block that a lead meets is on a house of one or two families; outside it may be on any. */
function isDwelling({ arresters, bars, buildings }: Site, meets: readonly (string | null)[]): Answer {
  const wheres = [...arresters, ...bars].flatMap((p) => (meets.includes(p.id) ? [p.where] : []));
  const its = buildings.filter((b) => wheres.includes(b.id));
  const [first, ...others] = (its.length > 0 ? its : buildings).map((b) => b.dwelling);
  return first !== undefined && others.every((d) => d === first) ? first : 'unknown';
}

function ofLead(id: string, lengthM: Interval | null, dwelling: 'yes' | 'unknown'): Verdict {
  const at = [id];
  if (lengthM === null)
    return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'runLengthM', value: lengthM, limit: mostM, sense: 'most' } as const;
  const short = isAtMost(lengthM, mostM * 1.002);
  if (short === 'yes') return { is: 'met', at, because: { key: 'short' }, measured };
  if (short === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' }, measured };
  if (dwelling === 'yes') return { is: 'not met', at, because: { key: 'long' }, measured };
  return { is: 'cannot tell', at, because: { key: 'house unknown' }, settle: { key: 'who lives there' }, measured };
}
