import type { Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { canJudgePairs, judgedBoxes, judgedPairs, withstandV } from './judged-pairs.ts';
import { strikeDoubt } from './strike-doubt.ts';

export const boxesHeldTogether = rule({
  id: 'boxes-held-together',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'IEC 60664-1, rated impulse voltage of category II at 230/400 V',
    edition: null,
    clause: 'table F.1',
    provenance: 'memory',
  },
  needs: ['sections', 'site', 'strike', 'bonding', 'electrodes'],
  check(facts) {
    const { site, sections, electrodes } = facts;
    if (!canJudgePairs(site)) return nothingThere({ sections }, 'equipment');
    const { strike } = facts;
    if (strike.refused !== null) return strikeDoubt({ strike, site, sections, electrodes })!;
    const asked = judgedPairs(strike, site);
    if (asked.length === 0) return nothingThere({ sections }, 'equipment');
    const doubts = strikeDoubt({ strike, site, sections, electrodes });
    if (doubts !== null) return doubts;
    const worstFirst = [...asked].sort((x, y) => volts(y) - volts(x));
    return folded(worstFirst, new Set(judgedBoxes(site)), facts.bonding);
  },
});

type Difference = Facts['strike']['differences'][number];

function volts({ peak }: Difference): number {
  return Math.abs(peak.value);
}

/** Nothing but the protective conductor of a feeder bonds the two: it runs through the house and is not made for a strike. */
function isByFeeder({ groups, groupOf }: Facts['bonding'], a: string, b: string): boolean {
  const group = groups.find(({ id }) => id === groupOf.get(a));
  return (
    group !== undefined && group.id === groupOf.get(b) && group.byFeeder.includes(a) !== group.byFeeder.includes(b)
  );
}

/** A box that is over against several others is one finding: the worst leads, the others of it stand beneath. A bar is no box. */
function folded(
  worstFirst: readonly Difference[],
  boxes: ReadonlySet<string>,
  bonding: Facts['bonding'],
): readonly Verdict[] {
  const leadingOf = new Map<string, string>();
  return worstFirst.map((difference): Verdict => {
    const at = [difference.pair.a, difference.pair.b];
    const peakV = volts(difference);
    const measured = { key: 'peakV', value: peakV, limit: withstandV, sense: 'most' } as const;
    if (peakV <= withstandV) {
      const { a, b } = difference.pair;
      if (isByFeeder(bonding, a, b)) return { is: 'not met', at, because: { key: 'by feeder' } };
      const isOne = bonding.groupOf.get(a) === bonding.groupOf.get(b);
      return { is: 'met', at, because: { key: isOne ? 'held' : 'held by a line' }, measured };
    }
    const under = at.map((id) => leadingOf.get(id)).find((id) => id !== undefined);
    const leading = under ?? `boxes-held-together:${at.join('+')}`;
    for (const id of at) if (boxes.has(id) && !leadingOf.has(id)) leadingOf.set(id, leading);
    const parent = under === undefined ? {} : { under };
    if (!Number.isFinite(difference.wayM))
      return { is: 'not met', at, because: { key: 'no metal', values: { peakV } }, measured, ...parent };
    return {
      is: 'not met',
      at,
      because: { key: 'apart', values: { peakV, wayM: difference.wayM } },
      measured,
      ...parent,
    };
  });
}
