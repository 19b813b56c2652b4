import type { ConductorFacts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
import { copperAnswer } from '../copper-section.ts';
import { reachedThick } from '../reached-thick.ts';
import { rule } from '../rule.ts';
import { metalAtPools } from './pool-metal.ts';

/** Fixed metal this near to the water's edge belongs to the pool's bond, metres (5 ft as printed). */
const withinM = 1.524;
/** Metal higher above the water is out of a bather's reach, metres (12 ft as printed: 3.7 m). */
const reachM = 3.7;
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
    metalAtPools(facts, withinM, (part, pool) => reachedThick(facts, part.id, new Set([pool]), isThick), reachM),
});

/** Thinner than asked, or stranded: the clause asks solid copper. */
function isThick(c: ConductorFacts): Answer {
  if (c.wire?.stranded === 'yes') return 'no';
  const is = copperAnswer(c, leastAreaM2);
  return is === 'enough' ? 'yes' : is === 'thin' ? 'no' : 'unknown';
}
