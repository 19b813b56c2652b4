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
    { from: 1999, clause: '820.100(A)(4)' },
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
      ...leads.map((c): readonly [string, Interval | null] => [c.id, c.lengthM]),
      ...own.map((a): readonly [string, Interval | null] => [a.id, a.leadM]),
    ];
    return all.length === 0 ? nothingThere(facts, 'arresters') : all.map(([id, lengthM]) => ofLead(id, lengthM));
  },
});

function ofLead(id: string, lengthM: Interval | null): Verdict {
  const at = [id];
  if (lengthM === null)
    return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'runLengthM', value: lengthM, limit: mostM, sense: 'most' } as const;
  const short = isAtMost(lengthM, mostM * 1.002);
  if (short === 'yes') return { is: 'met', at, because: { key: 'short' }, measured };
  if (short === 'no') return { is: 'not met', at, because: { key: 'long' }, measured };
  return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' }, measured };
}
