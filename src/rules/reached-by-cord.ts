import type { Bonding, PartTie } from '../bonding/bonding.ts';
import type { Site } from '../site/site.ts';

/** Ties that a protective conductor makes; a core or a pulled plug is none. */
const kinds: ReadonlySet<PartTie['kind']> = new Set(['cord', 'feeder', 'case']);

type OfSite = { readonly bonding: Bonding; readonly site: Site };

/**
 * What the protective conductors of mains lines tie to any of `roots`, at once or from part to part, in this state.
 * `perhaps`: also by those of which nobody said whether they are there. `nameOf` draws together what is one piece anyway.
 */
export function reachedByCord(
  facts: OfSite,
  roots: readonly string[],
  perhaps: boolean,
  nameOf: (part: string) => string = (part) => part,
): ReadonlySet<string> {
  return cordsFrom(facts, perhaps, nameOf)(roots);
}

/** The same for many roots, one after the other. */
export function cordsFrom(
  { bonding, site }: OfSite,
  perhaps: boolean,
  nameOf: (part: string) => string,
): (roots: readonly string[]) => ReadonlySet<string> {
  const mains = new Set(site.lines.filter((l) => l.kind === 'mains').map((l) => l.id));
  const nextTo = new Map<string, string[]>();
  for (const { a, b, kind, is, part } of bonding.ties) {
    if (!mains.has(part) || !kinds.has(kind) || (is !== 'there' && !perhaps)) continue;
    add(nextTo, nameOf(a), nameOf(b));
    add(nextTo, nameOf(b), nameOf(a));
  }
  return (roots) => {
    const reached = new Set(roots.map(nameOf));
    // A set goes on to what is added while it is walked.
    for (const id of reached) for (const other of nextTo.get(id) ?? []) reached.add(other);
    return reached;
  };
}

function add(nextTo: Map<string, string[]>, from: string, to: string): void {
  const list = nextTo.get(from);
  if (list === undefined) nextTo.set(from, [to]);
  else list.push(to);
}
