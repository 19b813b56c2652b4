import type { Bonding } from '../bonding/bonding.ts';
import type { ConductorFacts } from '../facts/facts.ts';
import type { Answer } from '../site/site.ts';
import { once } from '../units/once.ts';
import { neighbours, reachedFrom } from './neighbours.ts';

interface Wired {
  readonly bonding: Bonding;
  readonly conductors: readonly ConductorFacts[];
}

/**
 * Whether permanent metal leads from a part to one of `targets` by conductors that are all thick enough, by what `isThick`
 * says of each. What is no typed conductor (a mount, an owner's `bonded: yes`) is taken at its word; the conductor of a
 * feeder has no size here. Asked of parts that bonds join anyway.
 */
export function reachedThick(
  facts: Wired,
  from: string,
  targets: ReadonlySet<string>,
  isThick: (c: ConductorFacts) => Answer,
): Answer {
  return thickWays(facts, targets, isThick)(from);
}

/** The same for many parts, one after the other. */
export function thickWays(
  { bonding, conductors }: Wired,
  targets: ReadonlySet<string>,
  isThick: (c: ConductorFacts) => Answer,
): (from: string) => Answer {
  const thick = new Map<string, Answer>();
  for (const c of conductors) thick.set(c.id, isThick(c));
  const certain: (readonly [string, string])[] = [];
  const possible: (readonly [string, string])[] = [];
  for (const { kind, is, part, a, b } of bonding.ties) {
    if (kind !== 'metal' && kind !== 'feeder') continue;
    const own = kind === 'feeder' ? 'unknown' : (thick.get(part) ?? 'yes');
    if (own === 'no') continue;
    possible.push([a, b]);
    if (own === 'yes' && is === 'there') certain.push([a, b]);
  }
  const reached = once(() => reachedFrom([...targets], neighbours(certain)));
  const reachable = once(() => reachedFrom([...targets], neighbours(possible)));
  return (from) => {
    if (reached().has(from)) return 'yes';
    return reachable().has(from) ? 'unknown' : 'no';
  };
}
