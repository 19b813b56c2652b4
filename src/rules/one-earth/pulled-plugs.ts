import type { Line, Site, Stop } from '../../site/site.ts';

/**
 * What the shield meets on either side of each connector that is pulled by hand: whoever holds one half and the socket
 * touches both. Only where each side meets something, and not the same thing.
 */
export function pulledPlugs(site: Site): readonly (readonly [string, string])[] {
  return site.lines.filter((l) => l.kind === 'coax' && l.present !== 'no').flatMap((l) => plugsOf(l, site));
}

function plugsOf({ path }: Line, site: Site): readonly (readonly [string, string])[] {
  return path.flatMap((stop, i) => {
    if (stop.is !== 'plug') return [];
    const before = nearest([...path.slice(0, i)].reverse(), site);
    const after = nearest(path.slice(i + 1), site);
    return before === null || after === null || before === after ? [] : [[before, after] as const];
  });
}

/** The first part on this side that the shield is tied to, up to the next plug. */
function nearest(stops: readonly Stop[], site: Site): string | null {
  for (const stop of stops) {
    if (stop.is === 'plug' || stop.is === 'unknown') return null;
    if (stop.is !== 'part' && stop.is !== 'bond') continue;
    const id = stop.at.part;
    if (id !== null && !site.antennas.some((a) => a.id === id)) return carrierOf(id, site);
  }
  return null;
}

/** An arrester stands for what it is bolted to. */
function carrierOf(id: string, site: Site): string {
  return site.arresters.find((a) => a.id === id)?.on?.part ?? id;
}
