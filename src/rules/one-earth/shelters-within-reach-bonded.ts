import type { Facts } from '../../facts/facts.ts';
import { once } from '../../units/once.ts';
import { armsReachM } from '../arms-reach.ts';
import { addBond } from '../changes/add-bond.ts';
import { isInPieces } from '../in-pieces.ts';
import { isWhole } from '../looked-at.ts';
import { cordsFrom } from '../reached-by-cord.ts';
import { rule, type Verdict } from '../rule.ts';
import { leastBondM2, ofBond } from './bond-of-pair.ts';
import { type Pair, type PairInReach, pairsInReach } from './pairs-in-reach.ts';

type Asked = Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'bonding' | 'conductors' | 'site'>;

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
  limits: [
    { key: 'areaM2', value: leastBondM2, sense: 'least', of: 'copper from one to the other' },
    { key: 'distanceLengthM', value: armsReachM, sense: 'least', of: 'where not bonded' },
  ],
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const { bonding, site } = facts;
    const pairs = pairsInReach(site);
    if (pairs.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    const groupOf = (id: string) => bonding.groupOf.get(id) ?? id;
    const cords = once(() => cordsFrom(facts, false, groupOf));
    const byCords = ([a, b]: Pair) => cords()([a]).has(groupOf(b));
    return pairs.map((p) => ofPair(p, facts, byCords));
  },
});

function ofPair(p: PairInReach, facts: Asked, byCords: (pair: Pair) => boolean): Verdict {
  const at = p.pair;
  const distance = distanceOf(p);
  if (p.how === 'far') return { is: 'met', at, because: { key: 'far' }, ...distance };
  const [a, b] = at.map((id) => facts.bonding.groupOf.get(id));
  const v = a !== undefined && a === b ? ofOne(at, facts) : ofGroups(p, facts, byCords);
  if (p.how !== 'perhaps near' || v.is !== 'not met') return v;
  return { is: 'cannot tell', at, because: { key: 'how near' }, settle: { key: 'tape' }, ...distance };
}

/** One bonded group: of metal that is not one piece the bond holds the piece that it lands on, and nobody said which that is. */
function ofOne(at: Pair, facts: Asked): Verdict {
  const v = ofBond(at, facts);
  const inPieces = facts.site.metalwork.filter((m) => at.includes(m.id) && isInPieces(m)).map((m) => m.id);
  if (v.is !== 'met' || inPieces.length === 0) return v;
  return {
    is: 'cannot tell',
    at,
    because: { key: 'in pieces', values: { inPieces } },
    settle: { key: 'each piece', values: { inPieces } },
  };
}

/** What no bond joins, as far as anybody knows. */
function ofGroups(p: PairInReach, facts: Asked, byCords: (pair: Pair) => boolean): Verdict {
  const { bonding } = facts;
  const at = p.pair;
  const { perhaps, bonds, bondsAndCords } = bonding.serviceBy;
  // one that may hang on the service, and another that does or may
  const mayJoin =
    at.some((id) => perhaps.has(id) && !bonds.has(id)) &&
    at.every((id) => perhaps.has(id) || bonds.has(id) || bondsAndCords.has(id));
  if (mayJoin || !isWhole(facts, 'conductors'))
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
  const beside = { ...distanceOf(p), ...addBond(facts, at[0], at[1]) };
  if (byCords(at)) return { is: 'not met', at, because: { key: 'cords only' }, severity: 'advice', ...beside };
  return { is: 'not met', at, because: { key: p.how === 'plug' ? 'two groups at a plug' : 'two groups' }, ...beside };
}

function distanceOf({ distanceM }: PairInReach) {
  if (distanceM === null) return {};
  return { measured: { key: 'distanceLengthM', value: distanceM, limit: armsReachM, sense: 'least' } as const };
}
