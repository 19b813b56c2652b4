import type { Bonding } from '../../bonding/bonding.ts';
import { isWhole } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const sheltersWithinReachBonded = rule({
  id: 'shelters-within-reach-bonded',
  family: 'practice',
  severity: 'hazard',
  codeSets: ['any'],
  source: {
    document: 'Army preventive maintenance monthly 599',
    edition: '2002',
    clause: 'pages 41, 42',
    provenance: 'read',
  },
  needs: ['header', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    const parts = [
      ...site.electrodes,
      ...site.supports,
      ...site.bars,
      ...site.arresters,
      ...site.equipment,
      ...site.metalwork,
    ];
    const pairs = parts.flatMap((p) => p.withinReach.map((other): readonly [string, string] => [p.id, other]));
    if (pairs.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    return pairs.map((pair) => ofPair(pair, bonding, isWhole(facts, 'conductors')));
  },
});

function ofPair(pair: readonly [string, string], bonding: Bonding, conductorsWhole: boolean): Verdict {
  const at = [...pair].sort();
  const [a, b] = pair.map((id) => bonding.groupOf.get(id));
  if (a !== undefined && a === b) return { is: 'met', at, because: { key: 'one group' } };
  const bothPerhaps = pair.every((id) => bonding.serviceBy.perhaps.has(id));
  if (bothPerhaps || !conductorsWhole)
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
  return { is: 'not met', at, because: { key: 'two groups' } };
}
