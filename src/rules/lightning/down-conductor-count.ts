import { isWhole } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { lightningSystem } from './lightning-system.ts';
import { perimeterM } from './perimeter.ts';

const leastCount = 2;
/** In the United States one more for every 30 m (100 ft) of perimeter beyond 75 m (250 ft), metres. */
const { fromM, perM } = { fromM: 76.2, perM: 30.48 };

export const downConductorCount = rule({
  id: 'down-conductor-count',
  family: 'code',
  severity: 'defect',
  codeSets: ['us', 'iec'],
  source: {
    document: 'MIL-HDBK-419A; NFPA 780; IEC 62305-3',
    edition: null,
    clause: 'down conductors; 5.3.3',
    provenance: 'read',
  },
  limits: [{ key: 'count', value: leastCount, sense: 'least' }],
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    // a mast or pole that stands by itself is slender: one way down is enough there
    if (facts.sections.buildings === 'none') return [{ is: 'not applicable', because: { key: 'no building' } }];
    const isIec = facts.header.region === 'iec' || facts.header.region === 'uk';
    const round = isIec ? 0 : perimeterM(facts.site);
    const least = countAsked(round ?? 0);
    const at = system.down.map((c) => c.id);
    const measured = { key: 'count', value: at.length, limit: least, sense: 'least' } as const;
    if (at.length >= least && round === null)
      return [{ is: 'cannot tell', at, because: { key: 'how far round' }, settle: { key: 'walk round' } }];
    if (at.length >= least) return [{ is: 'met', at, because: { key: 'enough' }, measured }];
    if (at.length === 0 || !isWhole(facts, 'conductors'))
      return [{ is: 'cannot tell', at, because: { key: 'not typed' }, settle: { key: 'walk round' } }];
    return [{ is: 'not met', at, because: { key: 'few' }, measured }];
  },
});

/** For a perimeter; of several buildings, which share conductors in a way that no file says, at least that of a small one. */
function countAsked(round: number): number {
  return round <= fromM ? leastCount : leastCount + Math.ceil((round - fromM) / perM);
}
