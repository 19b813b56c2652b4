import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Electrode, PartBase } from '../../site/site.ts';
import { isWhole } from '../looked-at.ts';
import { reachedFrom } from '../neighbours.ts';
import type { Verdict } from '../rule.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'conductors' | 'site'>;

/** Down conductors that have no electrode of their own at the foot, or of which that is not known; nothing of the others. */
export function electrodeAtEachDown(facts: Asked): readonly Verdict[] {
  const downs = facts.conductors.filter((c) => c.role === 'down conductor' && c.part.present !== 'no');
  const feet = downs.map((down) => ({ down, at: electrodesAt(down, facts, 'certain') }));
  const bare = feet.flatMap(({ down, at }) => (at.length === 0 ? withoutOwn(down, feet, facts) : []));
  return [...bare, ...sharedOnes(feet.filter(({ at }) => at.length > 0))];
}

interface Foot {
  readonly down: ConductorFacts;
  readonly at: readonly Electrode[];
}

function withoutOwn(down: ConductorFacts, feet: readonly Foot[], facts: Asked): readonly Verdict[] {
  const { bonding } = facts;
  if (isUpperPiece(down, feet, facts)) return [];
  const isOpen = down.ends.some((id) => id === null || bonding.openEnds.has(bonding.groupOf.get(id) ?? ''));
  const isWholeFile = isWhole(facts, 'conductors') && isWhole(facts, 'electrodes');
  if (isOpen || !isWholeFile || electrodesAt(down, facts, 'perhaps').length > 0)
    return [{ is: 'cannot tell', at: [down.id], because: { key: 'foot unknown' }, settle: { key: 'follow down' } }];
  return [{ is: 'not met', at: [down.id], because: { key: 'none at foot' } }];
}

/** From a terminal to a bar at which another piece, that has an electrode, goes on. */
function isUpperPiece({ ends }: ConductorFacts, feet: readonly Foot[], { site }: Asked): boolean {
  const lower = new Set(feet.filter((f) => f.at.length > 0).flatMap((f) => f.down.ends));
  const isLow = (id: string | null) => lower.has(id) && site.bars.some((b) => b.id === id);
  const isHigh = (id: string | null) => site.supports.some((s) => s.id === id);
  const [from, to] = ends;
  return (isHigh(from) && isLow(to)) || (isHigh(to) && isLow(from));
}

/**
 * The first electrodes below it, over bars and supports that no other down conductor lands on (up over the roof and down by
 * another is no way); `perhaps`: over metalwork and what may be there too.
 */
function electrodesAt(
  down: ConductorFacts,
  { conductors, site }: Asked,
  how: 'certain' | 'perhaps',
): readonly Electrode[] {
  const isThere = ({ present }: PartBase) => present === 'yes' || (how === 'perhaps' && present === 'unknown');
  const others = conductors.filter((c) => c !== down && c.role === 'down conductor').flatMap(pointsOf);
  const above = [...site.supports, ...(how === 'perhaps' ? site.metalwork : [])].filter((p) => !others.includes(p.id));
  const wires = conductors.filter((c) => c.role !== 'down conductor' && isThere(c.part) && c.part.condition !== 'open');
  const onward = [...site.bars, ...above]
    .filter(isThere)
    .map(({ id }) => [id, wires.map(pointsOf).flatMap((points) => (points.includes(id) ? points : []))] as const);
  const reached = reachedFrom(pointsOf(down), new Map(onward));
  return site.electrodes.filter((e) => isThere(e) && reached.has(e.id));
}

function pointsOf({ ends, passes }: ConductorFacts): readonly string[] {
  return [...ends, ...passes].filter((id) => id !== null);
}

/** Several on the same electrodes, of which there are fewer. */
function sharedOnes(feet: readonly Foot[]): readonly Verdict[] {
  const byElectrodes = new Map<string, Foot[]>();
  for (const foot of feet) {
    const key = foot.at.map((e) => e.id).join(' ');
    byElectrodes.set(key, [...(byElectrodes.get(key) ?? []), foot]);
  }
  return [...byElectrodes.values()].flatMap((group) => ofGroup(group));
}

function ofGroup(group: readonly Foot[]): readonly Verdict[] {
  const electrodes = group[0]!.at;
  const counts = electrodes.map((e) => e.members);
  const known = counts.reduce<number>((sum, n) => sum + (n ?? 0), 0);
  if (group.length === 1 || group.length <= known) return [];
  const at = group.map(({ down }) => down.id);
  const values = { electrodes: electrodes.map((e) => e.id) };
  // A run in the soil may be long enough to be one for each.
  const isRod = electrodes.every((e) => e.kind === 'rod' || e.kind === 'rods');
  if (isRod && !counts.includes(null)) return [{ is: 'not met', at, because: { key: 'shared', values } }];
  return [{ is: 'cannot tell', at, because: { key: 'perhaps shared', values }, settle: { key: 'count them', values } }];
}
