import { siteIndex, whereOf as whereIn } from '../bonding/site-index.ts';
import type { Part, Site } from '../site/site.ts';
import { onceFor } from '../units/once-for.ts';

/** Parts of a site by id, and where each is. */
export interface PartIndex {
  readonly get: (id: string) => Part | undefined;
  readonly has: (id: string) => boolean;
  readonly all: readonly Part[];
  readonly whereOf: (id: string | null) => string | null;
}

/** Made once for each site. */
export const partIndex: (site: Site) => PartIndex = onceFor((site) => {
  const index = siteIndex(site);
  return {
    get: (id) => index.parts.get(id),
    has: (id) => index.parts.has(id),
    get all() {
      return [...index.parts.values()];
    },
    whereOf: (id) => whereIn(index, id),
  };
});
