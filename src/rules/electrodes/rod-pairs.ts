import type { ElectrodeFacts } from '../../facts/facts.ts';
import type { Electrode } from '../../site/site.ts';
import { exact, type Interval } from '../../units/interval.ts';
import { typedApart } from '../apart.ts';

/** Two neighbouring rods of one system, or the members of a group. `spacingM` null: unknown. */
export interface RodPair {
  readonly at: readonly string[];
  readonly spacingM: Interval | null;
  readonly lengthM: Interval | null;
}

/** Groups of rods by their spacing, and single ones of known distance within 30 m of each other in one bonded group. */
export function rodPairs(rods: readonly ElectrodeFacts[]): readonly RodPair[] {
  const groups = rods.filter((e) => e.part.kind === 'rods' && e.part.members !== 1);
  const singles = rods.filter((e) => e.part.kind !== 'rods' && e.group !== null);
  const pairs: RodPair[] = groups.map((e) => ({ at: [e.id], spacingM: e.part.spacingM, lengthM: e.part.lengthM }));
  singles.forEach((a, i) => {
    for (const b of singles.slice(i + 1)) {
      if (a.group !== b.group) continue;
      const spacingM = rodsApart(a.part, b.part);
      if (spacingM !== null && spacingM.high > 0 && spacingM.low <= nearM)
        pairs.push({ at: [a.id, b.id].sort(), spacingM, lengthM: longest(a, b) });
    }
  });
  return pairs;
}

/** Beyond this no spacing rule speaks of two rods, metres. */
const nearM = 30;

/** As `near:` of either says, else between their places on the plan, metres; null: unknown. */
export function rodsApart(a: Electrode, b: Electrode): Interval | null {
  const near = typedApart(a, b);
  if (near !== null || a.position === null || b.position === null) return near;
  const [p, q] = [a.position, b.position];
  return exact(Math.hypot(p[0] - q[0], p[1] - q[1]));
}

function longest(a: ElectrodeFacts, b: ElectrodeFacts): Interval | null {
  const [x, y] = [a.part.lengthM, b.part.lengthM];
  return x === null || y === null ? null : { low: Math.max(x.low, y.low), high: Math.max(x.high, y.high) };
}
