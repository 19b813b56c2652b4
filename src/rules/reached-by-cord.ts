import type { Bonding, PartTie } from '../bonding/bonding.ts';
import { once } from '../units/once.ts';
import { onceFor } from '../units/once-for.ts';
import { neighbours, reachedFrom } from './neighbours.ts';

/** Ties that a protective conductor makes; a core or a pulled plug is none. */
const kinds: ReadonlySet<PartTie['kind']> = new Set(['cord', 'feeder', 'case']);

type OfSite = { readonly bonding: Bonding };

/**
 * What the protective conductors of mains lines tie to any of `roots`, at once or from part to part, in this state.
 * `perhaps`: also by those of which nobody said whether they are there. Gone through once for a site.
 */
export function reachedByCord(facts: OfSite, roots: readonly string[], perhaps: boolean): ReadonlySet<string> {
  const cords = cordsOf(facts.bonding);
  return (perhaps ? cords.perhaps() : cords.sure())(roots);
}

const cordsOf = onceFor((bonding: Bonding) => ({
  sure: once(() => cordsFrom({ bonding }, false, (part) => part)),
  perhaps: once(() => cordsFrom({ bonding }, true, (part) => part)),
}));

/** The same for many roots, one after the other. `nameOf` draws together what is one piece anyway. */
export function cordsFrom(
  { bonding }: OfSite,
  perhaps: boolean,
  nameOf: (part: string) => string,
): (roots: readonly string[]) => ReadonlySet<string> {
  const mains = new Set(bonding.lines.filter((l) => l.kind === 'mains').map((l) => l.id));
  const cords = bonding.ties.filter(
    ({ kind, is, part }) => mains.has(part) && kinds.has(kind) && (is === 'there' || perhaps),
  );
  const nextTo = neighbours(cords.map(({ a, b }) => [nameOf(a), nameOf(b)]));
  return (roots) => reachedFrom(roots.map(nameOf), nextTo);
}
