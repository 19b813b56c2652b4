import type { ArresterFacts, ConductorFacts } from '../../facts/facts.ts';
import type { Site } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';

/** The lead of an arrester to ground. */
export interface ArresterLead {
  /** Nothing was typed of it, and the arrester is bolted to a bar: it has none. */
  readonly bolted: boolean;
  /** null: not known, or bolted. */
  readonly lengthM: Interval | null;
  /** The conductor that it is; null where the length was typed of the arrester. */
  readonly wire: ConductorFacts | null;
}

/** As typed of the arrester, else none where it is bolted to one of the bars, else the conductor that is its lead. */
export function arresterLead(
  { id, part, bonded }: ArresterFacts,
  conductors: readonly ConductorFacts[],
  { bars }: Pick<Site, 'bars'>,
): ArresterLead {
  if (part.leadM !== null) return { bolted: false, lengthM: part.leadM, wire: null };
  if (bonded === 'yes' && bars.some((b) => b.id === part.on?.part)) return { bolted: true, lengthM: null, wire: null };
  const wire = wireOf(id, conductors);
  return { bolted: false, lengthM: wire?.lengthM ?? null, wire };
}

/** The lead where it is typed as a conductor of its own; of several nobody can say which carries the surge. */
function wireOf(arrester: string, conductors: readonly ConductorFacts[]): ConductorFacts | null {
  const [only, ...others] = conductors.filter((c) => c.ends.includes(arrester));
  return only !== undefined && others.length === 0 ? only : null;
}
