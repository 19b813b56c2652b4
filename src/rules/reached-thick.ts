import type { Bonding } from '../bonding/bonding.ts';
import type { ConductorFacts } from '../facts/facts.ts';
import type { Answer } from '../site/site.ts';
import { neighbours, reachedFrom } from './neighbours.ts';

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
    const ties = answers.flatMap(({ tie, is }) => (counts(is) ? [[tie.a, tie.b] as const] : []));
    const reached = reachedFrom([from], neighbours(ties));
    return [...targets].some((id) => reached.has(id));
  };
  if (isReached((is) => is === 'yes')) return 'yes';
  return isReached((is) => is !== 'no') ? 'unknown' : 'no';
}
