import type { Bonding } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import { once } from '../../units/once.ts';
import { addBond } from '../changes/add-bond.ts';
import { isWhole } from '../looked-at.ts';
import { cordsFrom } from '../reached-by-cord.ts';
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
    const typed = parts.flatMap((p) => p.withinReach.map((other) => pairOf(p.id, other)));
    const plugs = pulledPlugs(site).map(([a, b]) => pairOf(a, b));
    const pairs = new Map(
      [...plugs.map((p) => [p, 'plug'] as const), ...typed.map((p) => [p, 'reach'] as const)].map(([pair, how]) => [
        pair.join('+'),
        { pair, how },
      ]),
    );
    if (pairs.size === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    const groupOf = (id: string) => bonding.groupOf.get(id) ?? id;
    const cords = once(() => cordsFrom(facts, false, groupOf));
    const byCords = ([a, b]: Pair) => cords()([a]).has(groupOf(b));
    const whole = isWhole(facts, 'conductors');
    return [...pairs.values()].map(({ pair, how }) => withBond(ofPair(pair, how, byCords, bonding, whole), facts));
  },
});

type Pair = readonly [string, string];

/** The two may each name the other: one pair. */
const pairOf = (a: string, b: string) => [a, b].sort() as [string, string];

function ofPair(
  at: Pair,
  how: 'reach' | 'plug',
  byCords: (pair: Pair) => boolean,
  bonding: Bonding,
  conductorsWhole: boolean,
): Verdict {
  const [a, b] = at.map((id) => bonding.groupOf.get(id));
  if (a !== undefined && a === b) return { is: 'met', at, because: { key: 'one group' } };
  const bothPerhaps = at.every((id) => bonding.serviceBy.perhaps.has(id));
  if (bothPerhaps || !conductorsWhole)
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
  if (byCords(at)) return { is: 'not met', at, because: { key: 'cords only' }, severity: 'advice' };
  return { is: 'not met', at, because: { key: how === 'plug' ? 'two groups at a plug' : 'two groups' } };
}

function withBond(v: Verdict, { site, header }: Pick<Facts, 'site' | 'header'>): Verdict {
  return v.is === 'not met' ? { ...v, ...addBond(site, header.region, v.at[0]!, v.at[1]!) } : v;
}
