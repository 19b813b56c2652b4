import type { Conductor, Site } from '../site/site.ts';
import { onceFor } from '../units/once-for.ts';

/** Conductors by each part that they land on or pass, in the order of the file; absent ones too. Made once for each site. */
export const wiresOn: (conductors: Site['conductors']) => ReadonlyMap<string, readonly Conductor[]> = onceFor(
  (conductors) => {
    const landing = new Map<string, Conductor[]>();
    for (const c of conductors) {
      const parts = new Set([c.from.part, c.to.part, ...c.passes.map((p) => p.at.part)]);
      for (const part of parts) {
        if (part === null) continue;
        const list = landing.get(part);
        if (list === undefined) landing.set(part, [c]);
        else list.push(c);
      }
    }
    return landing;
  },
);
