import type { Facts } from '../../facts/facts.ts';
import type { Metalwork } from '../../site/site.ts';
import { isWhole } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'conductors'>;

/** Farthest between two bonds of a run, metres (50 ft as printed). */
export const farthestM = 15.24;

/** Bonds of a tray or conduit: enough of them for its length, `least` at the least, and one metal between them. */
export function runVerdict(run: Metalwork, facts: Asked, least: number): Verdict {
  const at = [run.id];
  const bonds = facts.conductors.filter((c) => [...c.ends, ...c.passes].includes(run.id)).length;
  const lengthM = lengthOf(run);
  const asked = Math.max(least, lengthM === null ? least : Math.ceil(lengthM / farthestM) + least - 1);
  const measured = { key: 'count', value: bonds, limit: asked, sense: 'least' } as const;
  if (run.continuous === 'no') return { is: 'not met', at, because: { key: 'parted' } };
  const isSaid = run.bonded === 'no' || (run.bonded === null && bonds > 0);
  const isOpen = !isSaid || !isWhole(facts, 'conductors');
  if (bonds < asked && !isOpen) return { is: 'not met', at, because: { key: 'few' }, measured };
  if (bonds < asked || lengthM === null || run.continuous === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'walk along' } };
  return { is: 'met', at, because: { key: 'bonded' }, measured };
}

/** Along its typed route; null where a point of it is not known. */
function lengthOf({ route }: Metalwork): number | null {
  const points = route?.map((p) => p.position) ?? [];
  if (points.length < 2) return null;
  return points.slice(1).reduce<number | null>((sum, to, i) => {
    const from = points[i]!;
    return sum === null || from === null || to === null ? null : sum + Math.hypot(to[0] - from[0], to[1] - from[1]);
  }, 0);
}
