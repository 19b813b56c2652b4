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
      return (
        both.length > 0 &&
        both.every((c) => c.areaM2 !== null && isAtLeast(c.areaM2, leastAreaM2 * printedShare) === 'no')
      );
    }),
});

/** A size as printed is met by a size as printed. */
const printedShare = 1 - 2e-3;
