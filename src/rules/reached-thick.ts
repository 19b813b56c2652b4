import type { Bonding } from '../bonding/bonding.ts';
import type { ConductorFacts } from '../facts/facts.ts';
import type { Answer } from '../site/site.ts';

/**
 * Whether permanent metal leads from a part to one of `targets` by conductors that are all thick enough, by what `isThick`
 * says of each. What is no typed conductor (a mount, an owner's `bonded: yes`) is taken at its word; the conductor of a
 * feeder has no size here. Asked of parts that bonds join anyway.
 */
export function reachedThick(
  { bonding, conductors }: { readonly bonding: Bonding; readonly conductors: readonly ConductorFacts[] },
  from: string,
  targets: ReadonlySet<string>,
  isThick: (c: ConductorFacts) => Answer,
): Answer {
  const thick = new Map(conductors.map((c) => [c.id, isThick(c)] as const));
  const ofTie = ({ kind, is, part }: Bonding['ties'][number]): Answer => {
    if (kind !== 'metal') return kind === 'feeder' ? 'unknown' : 'no';
    const own = thick.get(part) ?? 'yes';
    return is === 'there' || own === 'no' ? own : 'unknown';
  };
  const answers = bonding.ties.map((tie) => ({ tie, is: ofTie(tie) }));
  const isReached = (counts: (is: Answer) => boolean) => {
    const nextTo = neighbours(answers.filter(({ is }) => counts(is)).map(({ tie }) => tie));
    const reached = new Set([from]);
    // a set goes on to what is added while it is walked
    for (const id of reached) for (const other of nextTo.get(id) ?? []) reached.add(other);
    return [...targets].some((id) => reached.has(id));
  };
  if (isReached((is) => is === 'yes')) return 'yes';
  return isReached((is) => is !== 'no') ? 'unknown' : 'no';
}

function neighbours(ties: Bonding['ties']): ReadonlyMap<string, readonly string[]> {
  const nextTo = new Map<string, string[]>();
  for (const { a, b } of ties) {
    nextTo.set(a, [...(nextTo.get(a) ?? []), b]);
    nextTo.set(b, [...(nextTo.get(b) ?? []), a]);
  }
  return nextTo;
}
