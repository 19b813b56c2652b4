import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Electrode, ElectrodePurpose, Site } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';

/** What an electrode serves: as its owner says, else by what lands on it. Empty: nobody can say. */
export function purposesOf(
  e: Electrode,
  { site, conductors }: Pick<Facts, 'site' | 'conductors'>,
): ReadonlySet<ElectrodePurpose> {
  if (e.serves.length > 0) return new Set(e.serves);
  const landing = landingOn(conductors).get(e.id) ?? [];
  return new Set(landing.flatMap((c) => purposeBy(c, site) ?? []));
}

/** Conductors by each part that they land on or pass, in their order. */
const landingOn = onceFor((conductors: readonly ConductorFacts[]) => {
  const landing = new Map<string | null, ConductorFacts[]>();
  for (const c of conductors) {
    for (const id of new Set([...c.ends, ...c.passes])) landing.set(id, [...(landing.get(id) ?? []), c]);
  }
  return landing;
});

function purposeBy(c: ConductorFacts, site: Site): ElectrodePurpose | null {
  const meets = (parts: readonly { readonly id: string }[]) =>
    parts.some((p) => [...c.ends, ...c.passes].includes(p.id));
  if (c.role === 'service electrode wire') return 'service';
  if (c.role === 'down conductor') return 'lightning';
  if (c.role === 'mast lead') return meets(site.supports) ? 'tower' : 'antenna';
  if (c.role !== 'arrester lead') return null;
  return meets(site.arresters.filter((a) => ofServices.has(a.kind))) ? 'communications' : 'antenna';
}

const ofServices: ReadonlySet<string> = new Set(['telephone protector', 'data protector']);
