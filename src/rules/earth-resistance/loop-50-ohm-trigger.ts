import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import type { Interval } from '../../units/interval.ts';
import { ringsOf } from '../electrode-places/rings.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Of two of any three rods together. */
const mostOhm = 50;

export const loop50OhmTrigger = rule({
  id: 'loop-50-ohm-trigger',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'UFGS 13100N', edition: null, clause: 'counterpoise', provenance: 'read' },
  limits: [{ key: 'resistanceOhm', value: mostOhm, sense: 'most', of: 'two rods together' }],
  needs: ['sections', 'electrodes'],
  check(facts) {
    const rods = facts.electrodes.filter((e) => e.part.kind === 'rod' && e.measuredOhm !== null);
    // Fewer than three that were measured: nobody can tell of two of any three.
    return rods.length < 3 ? nothingThere(facts, 'electrodes') : [ofRods(rods, facts)];
  },
});

/** The two that are highest; the soil between them makes them higher still than the two in parallel. */
function ofRods(rods: readonly ElectrodeFacts[], { electrodes }: Pick<Facts, 'electrodes'>): Verdict {
  const highest = [...rods]
    .sort((a, b) => b.measuredOhm!.ohm.low - a.measuredOhm!.ohm.low || (a.id < b.id ? -1 : 1))
    .slice(0, 2);
  const at = highest.map((e) => e.id).sort();
  if (ringsOf(electrodes).some((r) => r.group !== null && highest.every((e) => e.group === r.group)))
    return { is: 'met', at, because: { key: 'has a ring' } };
  const pair = together(highest[0]!.measuredOhm!.ohm, highest[1]!.measuredOhm!.ohm);
  const measured = { key: 'resistanceOhm', value: pair, limit: mostOhm, sense: 'most' } as const;
  if (pair.low > mostOhm) return { is: 'not met', at, because: { key: 'high' }, measured };
  if (pair.high <= mostOhm) return { is: 'met', at, because: { key: 'low' }, measured };
  return { is: 'cannot tell', at, because: { key: 'wide' }, settle: { key: 'measure both' }, measured };
}

function together(a: Interval, b: Interval): Interval {
  const parallel = (x: number, y: number) => (x === 0 || y === 0 ? 0 : 1 / (1 / x + 1 / y));
  return { low: parallel(a.low, b.low), high: parallel(a.high, b.high) };
}
