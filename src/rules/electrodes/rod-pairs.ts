import type { ElectrodeFacts } from '../../facts/facts.ts';
import type { Interval } from '../../units/interval.ts';

/** Two neighbouring rods of one system, or the members of a group. `spacingM` null: unknown. */
export interface RodPair {
  readonly at: readonly string[];
  readonly spacingM: Interval | null;
  readonly lengthM: Interval | null;
}

/** Groups of rods by their spacing, and single ones of known position within 30 m of each other in one bonded group. */
export function rodPairs(rods: readonly ElectrodeFacts[]): readonly RodPair[] {
  const groups = rods.filter((e) => e.part.kind === 'rods' && e.part.members !== 1);
  const singles = rods.filter((e) => e.part.kind !== 'rods' && e.part.position !== null && e.group !== null);
  const pairs: RodPair[] = groups.map((e) => ({ at: [e.id], spacingM: e.part.spacingM, lengthM: e.part.lengthM }));
  singles.forEach((a, i) => {
    for (const b of singles.slice(i + 1)) {
      if (a.group !== b.group) continue;
      const distance = Math.hypot(a.part.position![0] - b.part.position![0], a.part.position![1] - b.part.position![1]);
      if (distance > 0 && distance <= nearM)
        pairs.push({ at: [a.id, b.id].sort(), spacingM: exactly(distance), lengthM: longest(a, b) });
    }
  });
  return pairs;
}

/** Beyond this no spacing rule speaks of two rods, metres. */
const nearM = 30;

const exactly = (value: number): Interval => ({ low: value, high: value });

function longest(a: ElectrodeFacts, b: ElectrodeFacts): Interval | null {
  const [x, y] = [a.part.lengthM, b.part.lengthM];
  return x === null || y === null ? null : { low: Math.max(x.low, y.low), high: Math.max(x.high, y.high) };
}
