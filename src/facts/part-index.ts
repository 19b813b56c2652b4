import type { Part, Site } from '../site/site.ts';

/** Parts of a site by id. */
export type PartIndex = ReadonlyMap<string, Part>;

export function partIndex(site: Site): PartIndex {
  const all: readonly (readonly Part[])[] = [
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
  return new Map(all.flat().map((part) => [part.id, part]));
}

/** Where a part is: its own word, else that of what it is on, else of its place; null: nobody said. */
export function whereOf(id: string | null, index: PartIndex): string | null {
  const seen = new Set<string>();
  for (let at = id; at !== null && !seen.has(at); ) {
    seen.add(at);
    const part = index.get(at);
    if (part === undefined) return null;
    if (part.where !== null) return part.where;
    at = part.on?.part ?? null;
  }
  return null;
}
