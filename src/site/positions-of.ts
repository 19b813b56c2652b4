import type { Guy, Part, Position, Site } from './site.ts';

/** Where things of a site are; null where nobody knows. */
export interface Positions {
  /** Of a part: its own place, else that of what it is on. Of a guy: its anchor, where a conductor is clamped to it. */
  readonly of: (id: string | null) => Position | null;
}

/** `partOf` finds a part of the site by id. */
export function positionsOf(site: Site, partOf: (id: string) => Part | undefined): Positions {
  const guys = new Map(site.supports.flatMap((s) => s.guys.map((g) => [g.id, g] as const)));
  const ofPart = (id: string | null): Position | null => {
    const seen = new Set<string>();
    for (let at = id; at !== null && !seen.has(at); ) {
      seen.add(at);
      const part = partOf(at);
      if (part?.position != null) return part.position;
      at = part?.on?.part ?? null;
    }
    return null;
  };
  const of = (id: string | null): Position | null => {
    const guy = guys.get(id ?? '');
    return guy === undefined ? ofPart(id) : anchorOf(guy);
  };
  return { of };
}

/** A place that is only named has no coordinates. */
export function anchorOf({ anchor }: Guy): Position | null {
  return typeof anchor === 'string' ? null : anchor;
}
