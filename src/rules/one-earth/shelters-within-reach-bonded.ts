import type { Bonding } from '../../bonding/bonding.ts';
import { isWhole } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { pulledPlugs } from './pulled-plugs.ts';

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
    const typed = parts.flatMap((p) => p.withinReach.map((other) => [p.id, other].sort() as [string, string]));
    const plugs = pulledPlugs(site).map((pair) => [...pair].sort() as [string, string]);
    const pairs = new Map([...typed, ...plugs].map((pair) => [pair.join('+'), pair]));
    if (pairs.size === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    return [...pairs.values()].map((pair) => ofPair(pair, bonding, isWhole(facts, 'conductors')));
  },
});

/** The two may each name the other: one pair. */
function ofPair(at: readonly [string, string], bonding: Bonding, conductorsWhole: boolean): Verdict {
  const [a, b] = at.map((id) => bonding.groupOf.get(id));
  if (a !== undefined && a === b) return { is: 'met', at, because: { key: 'one group' } };
  const bothPerhaps = at.every((id) => bonding.serviceBy.perhaps.has(id));
  if (bothPerhaps || !conductorsWhole)
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
  return { is: 'not met', at, because: { key: 'two groups' } };
}
