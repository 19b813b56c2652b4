import type { ConductorFacts } from '../../facts/facts.ts';
import { type Interval, isAtMost, sum } from '../../units/interval.ts';
import { antennaLeads } from '../conductor-sizes/leads-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Ours: the code gives no number. */
const mostDeg = 180;

export const groundConductorStraight = rule({
  id: 'ground-conductor-straight',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.21(E)', provenance: 'ours' },
  limits: [{ key: 'turnDeg', value: mostDeg, sense: 'most' }],
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const bent = antennaLeads(facts).filter((c) => c.bends.length > 0);
    return bent.length === 0 ? nothingThere(facts, 'conductors') : bent.map(ofLead);
  },
});

function ofLead(c: ConductorFacts): Verdict {
  const at = [c.id];
  const known = c.bends.flatMap((b): readonly Interval[] => (b.angleDeg === null ? [] : [b.angleDeg]));
  const total = sum(known)!;
  const isWhole = known.length === c.bends.length;
  const value = isWhole ? total : { low: total.low, high: Infinity };
  const measured = { key: 'turnDeg', value, limit: mostDeg, sense: 'most' } as const;
  const straight = isAtMost(value, mostDeg);
  if (straight === 'yes') return { is: 'met', at, because: { key: 'straight' }, measured };
  if (straight === 'no') return { is: 'not met', at, because: { key: 'crooked' }, measured };
  return { is: 'cannot tell', at, because: { key: 'angle unknown' }, settle: { key: 'measure it' } };
}
