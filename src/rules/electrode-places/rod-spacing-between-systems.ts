import type { Facts } from '../../facts/facts.ts';
import { type Interval, isAtLeast } from '../../units/interval.ts';
import { drivenRods, printedShare } from '../electrodes/driven.ts';
import { rodsApart } from '../electrodes/rod-pairs.ts';
import { isolatedGroups, underGroup } from '../isolated-groups.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 6 ft. */
const leastM = 1.8288;
/** Beyond this nobody speaks of two electrodes standing beside each other. */
const nearM = 10;

export const rodSpacingBetweenSystems = rule({
  id: 'rod-spacing-between-systems',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.53(B)', provenance: 'read' },
  limits: [{ key: 'spacingLengthM', value: leastM, sense: 'least' }],
  needs: ['header', 'sections', 'electrodes', 'bonding'],
  check(facts) {
    const pairs = strangers(facts);
    return pairs.length === 0 ? nothingThere(facts, 'electrodes') : pairs.map((p) => ofPair(p, facts));
  },
});

interface Pair {
  readonly at: readonly string[];
  readonly groups: readonly (string | null)[];
  readonly distanceM: Interval;
}

/** Rods that no bond makes one system and that stand beside each other. Once bonded, spacing is another condition. */
function strangers({ electrodes }: Pick<Facts, 'electrodes'>): readonly Pair[] {
  const rods = drivenRods(electrodes);
  return rods.flatMap((a, i) =>
    rods.slice(i + 1).flatMap((b): readonly Pair[] => {
      const distanceM = rodsApart(a.part, b.part);
      if (distanceM === null) return [];
      const isPair = distanceM.low <= nearM && (a.group === null || a.group !== b.group);
      return isPair ? [{ at: [a.id, b.id].sort(), groups: [a.group, b.group], distanceM }] : [];
    }),
  );
}

function ofPair({ at, groups, distanceM }: Pair, facts: Pick<Facts, 'header' | 'sections' | 'bonding'>): Verdict {
  const measured = { key: 'spacingLengthM', value: distanceM, limit: leastM, sense: 'least' } as const;
  const far = isAtLeast(distanceM, leastM * printedShare);
  if (far === 'yes') return { is: 'met', at, because: { key: 'far enough' }, measured };
  if (far === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'spacing unknown' }, settle: { key: 'measure it' }, measured };
  const { perhapsJoined, openEnds } = facts.bonding;
  const mayBeOne = groups.some((g) => g !== null && (perhapsJoined.has(g) || openEnds.has(g)));
  if (mayBeOne || !isWhole(facts, 'conductors'))
    return { is: 'cannot tell', at, because: { key: 'perhaps one system' }, settle: { key: 'trace' } };
  const isolated = isolatedGroups(facts.bonding, () => true);
  const parent = at.map((id) => underGroup(id, isolated)).find((u) => u.under !== undefined);
  return { is: 'not met', at, because: { key: 'near' }, measured, ...parent };
}
