import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Line } from '../../site/site.ts';
import { type Interval, isAtLeast } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { outdoorLeads } from '../lines/outdoor-leads.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Least distance of a lead-in to a lightning conductor, metres (6 ft as printed). */
const leastM = 1.8;

export const leadInClearOfLightningConductor = rule({
  id: 'lead-in-clear-of-lightning-conductor',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.18(A)', provenance: 'second-hand' },
  limits: [{ key: 'distanceLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const leads = outdoorLeads(facts.site);
    if (leads.length === 0) return nothingThere(facts, 'lines');
    const down = facts.conductors.filter((c) => c.role === 'down conductor');
    if (down.length === 0) return nothingThere(facts, 'conductors');
    const between = apart(facts.site);
    return leads.flatMap((l) => down.map((c) => ofPair(l, c, between(l.id, c.id), facts)));
  },
});

function ofPair(line: Line, down: ConductorFacts, distanceM: Interval | null, facts: Pick<Facts, 'bonding'>): Verdict {
  const at = [line.id, down.id];
  const measured =
    distanceM === null ? null : ({ key: 'distanceLengthM', value: distanceM, limit: leastM, sense: 'least' } as const);
  const enough = distanceM === null ? 'unknown' : isAtLeast(distanceM, leastM);
  if (enough === 'yes') return { is: 'met', at, because: { key: 'clear' }, measured: measured! };
  if (isBonded(line, down, facts)) return { is: 'met', at, because: { key: 'bonded' } };
  if (enough === 'no') return { is: 'not met', at, because: { key: 'near' }, measured: measured! };
  return { is: 'cannot tell', at, because: { key: 'distance unknown' }, settle: { key: 'tape' } };
}

/** The shield of the line is bonded to something in the group of the lightning conductor. */
function isBonded(line: Line, down: ConductorFacts, { bonding }: Pick<Facts, 'bonding'>): boolean {
  const groups = down.ends.map((id) => bonding.groupOf.get(id ?? ''));
  const shield = bonding.lines.find((l) => l.id === line.id)?.conductors.find((c) => c.which === 'shield');
  const met = (shield?.bondedAt ?? []).map((point) => bonding.groupOf.get(point.split('@')[0]!.split('.')[0]!));
  return met.some((g) => g !== undefined && groups.includes(g));
}
