import type { NamedThing } from './named-things.ts';

/** Things of one study by number, with what names them and what they name. */
export interface ThingGraph {
  readonly things: readonly NamedThing[];
  readonly numberOf: ReadonlyMap<string, number>;
  /** Both ways, the role of the one that is named marked; several where it is named several times. */
  readonly ties: readonly (readonly { readonly role: string; readonly to: number }[])[];
}

/** The first of two things of one id stands for both. */
export function thingGraph(all: readonly NamedThing[]): ThingGraph {
  const numberOf = new Map<string, number>();
  const things = all.filter((t) => {
    if (numberOf.has(t.id)) return false;
    numberOf.set(t.id, numberOf.size);
    return true;
  });
  const ties: { role: string; to: number }[][] = things.map(() => []);
  things.forEach((t, i) => {
    for (const { role, id } of t.names) {
      const to = numberOf.get(id);
      if (to === undefined) continue;
      ties[i]!.push({ role, to });
      ties[to]!.push({ role: `by ${role}`, to: i });
    }
  });
  return { things, numberOf, ties };
}
