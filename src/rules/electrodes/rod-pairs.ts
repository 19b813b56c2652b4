import type { ElectrodeFacts } from '../../facts/facts.ts';
import type { Conductor, Electrode, Site } from '../../site/site.ts';
import { exact, type Interval, min, sum } from '../../units/interval.ts';
import { typedApart } from '../apart.ts';
import { wiresOn } from '../wires-on.ts';

/** Two neighbouring rods of one system, or the members of a group. `spacingM` null: unknown. */
export interface RodPair {
  readonly at: readonly string[];
  readonly spacingM: Interval | null;
  /** Of two whose spacing is unknown, how long a wire joins them: they are no farther apart than that. */
  readonly wireM: Interval | null;
  readonly lengthM: Interval | null;
}

/**
 * Groups of rods by their spacing; and single ones in one bonded group that stand within 30 m of each other, or of which
 * nobody knows how far that is and one wire runs straight from one to the other.
 */
export function rodPairs(rods: readonly ElectrodeFacts[], conductors: Site['conductors']): readonly RodPair[] {
  const groups = rods.filter((e) => e.part.kind === 'rods' && e.part.members !== 1);
  const singles = rods.filter((e) => e.part.kind !== 'rods' && e.group !== null);
  const pairs: RodPair[] = groups.map(({ id, part: { spacingM, lengthM } }) => ({
    at: [id],
    spacingM,
    wireM: null,
    lengthM,
  }));
  singles.forEach((a, i) => {
    for (const b of singles.slice(i + 1)) {
      const pair = a.group === b.group ? pairOf(a, b, conductors) : null;
      if (pair !== null) pairs.push(pair);
    }
  });
  return pairs;
}

/** Beyond this no spacing rule speaks of two rods, metres. */
const nearM = 30;

function pairOf(a: ElectrodeFacts, b: ElectrodeFacts, conductors: Site['conductors']): RodPair | null {
  const spacingM = rodsApart(a.part, b.part);
  const pair = { at: [a.id, b.id].sort(), spacingM, lengthM: longest(a, b) };
  if (spacingM !== null) return spacingM.high > 0 && spacingM.low <= nearM ? { ...pair, wireM: null } : null;
  const wires = (wiresOn(conductors).get(a.id) ?? []).filter((c) => c.present === 'yes');
  const pieces = wires.flatMap((c) => piecesBetween(c, a.id, b.id));
  if (pieces.length === 0) return null;
  const known = pieces.filter((lengthM) => lengthM !== null);
  return { ...pair, wireM: known.length === 0 ? null : known.reduce(min) };
}

/** How long a wire is from one to the other past nothing else; where its pieces have no lengths, no longer than all of it. */
function piecesBetween(c: Conductor, a: string, b: string): readonly (Interval | null)[] {
  const stops = [c.from.part, ...c.passes.map((p) => p.at.part), c.to.part];
  const wholeM = c.lengthsM.length > 0 ? sum(c.lengthsM) : null;
  const areSaid = c.lengthsM.length === stops.length - 1;
  return stops.slice(1).flatMap((to, i) => {
    const isBetween = (stops[i] === a && to === b) || (stops[i] === b && to === a);
    return isBetween ? [(areSaid ? c.lengthsM[i]! : null) ?? c.lengthM ?? wholeM] : [];
  });
}

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
