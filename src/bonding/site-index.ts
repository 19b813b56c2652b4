import type { Part, Site, Support, Where } from '../site/site.ts';
import { onceFor } from '../units/once-for.ts';

/** Parts of a site by id, with what the graph asks again and again. */
export interface SiteIndex {
  readonly site: Site;
  readonly parts: ReadonlyMap<string, Part>;
  /** Guys by id, with the support that each holds. */
  readonly guys: ReadonlyMap<string, Support>;
}

/** Made once for each site, which never changes. */
export const siteIndex: (site: Site) => SiteIndex = onceFor(indexOf);

function indexOf(site: Site): SiteIndex {
  const sections: readonly (readonly Part[])[] = [
    site.electrodes,
    site.supports,
    site.antennas,
    site.bars,
    site.arresters,
    site.equipment,
    site.lines,
    site.conductors,
    site.joints,
    site.metalwork,
  ];
  return {
    site,
    parts: new Map(sections.flat().map((part) => [part.id, part])),
    guys: new Map(site.supports.flatMap((s) => s.guys.map((g) => [g.id, s] as const))),
  };
}

/** Where a part is: its own word, else that of what it is on; outdoor sections are outside unless said; null: nobody said. */
export function whereOf({ parts, site }: SiteIndex, id: string | null): Where {
  const seen = new Set<string>();
  for (let at = id; at !== null && !seen.has(at); ) {
    seen.add(at);
    const part = parts.get(at);
    if (part === undefined) return null;
    const place = part.place === null ? undefined : site.places.find((p) => p.id === part.place);
    if (part.where !== null) return part.where;
    if (place?.where != null) return place.where;
    if (outdoor.has(part.section)) return 'outside';
    at = part.on?.part ?? null;
  }
  return null;
}

const outdoor: ReadonlySet<Part['section']> = new Set(['electrodes', 'supports', 'antennas'] as const);

/** Path of a field in the file, such as `arresters.phone-block.bonded`. */
export function fieldPath(part: Part, field: string): string {
  return `${part.section}.${part.id}.${field}`;
}
