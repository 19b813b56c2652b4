import type { ConductorFacts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { rule } from '../rule.ts';
import { metalAtPools } from './pool-metal.ts';

/** Fixed metal this near to the water's edge belongs to the pool's bond, metres (5 ft as printed). */
const withinM = 1.524;
/** Least section of the bond, square metres (8 AWG as printed). */
const leastAreaM2 = 8.37e-6;

export const poolFixedMetalBonded = rule({
  id: 'pool-fixed-metal-bonded',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '680.26(B)', provenance: 'second-hand' },
  limits: [
    { key: 'distanceLengthM', value: withinM, sense: 'least' },
    { key: 'areaM2', value: leastAreaM2, sense: 'least', of: 'solid copper' },
  ],
  needs: ['header', 'sections', 'bonding', 'masts', 'site', 'conductors'],
  check: (facts) =>
    metalAtPools(facts, withinM, (part, pool) => {
      const both = facts.conductors.filter((c) => [part.id, pool].every((id) => [...c.ends, ...c.passes].includes(id)));
      const thin = both.map(isThin);
      // in one group by some other way: no conductor between the two says its size
      if (thin.length === 0 || thin.includes('no')) return 'no';
      return thin.includes('unknown') ? 'unknown' : 'yes';
    }),
});

/** Thinner than asked, or stranded: the clause asks solid copper. A size as printed is met by a size as printed. */
function isThin({ areaM2, wire }: ConductorFacts): Answer {
  if (wire?.stranded === 'yes') return 'yes';
  if (areaM2 === null) return 'unknown';
  const enough = isAtLeast(areaM2, leastAreaM2 * (1 - 2e-3));
  return enough === 'yes' ? 'no' : enough === 'no' ? 'yes' : 'unknown';
}
