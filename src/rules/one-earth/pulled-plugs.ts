import { type PartIndex, partIndex } from '../../facts/part-index.ts';
import type { Arrester, Line, Site, Stop } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';

/**
 * What the shield meets on either side of each connector that is pulled by hand: whoever holds one half and the socket
 * touches both. Only where each side meets something, and not the same thing.
 */
export const pulledPlugs: (site: Site) => readonly (readonly [string, string])[] = onceFor((site) =>
  site.lines.filter((l) => l.kind === 'coax' && l.present !== 'no').flatMap((l) => plugsOf(l, partIndex(site))),
);

function plugsOf({ path }: Line, parts: PartIndex): readonly (readonly [string, string])[] {
  return path.flatMap((stop, i) => {
    if (stop.is !== 'plug') return [];
    const before = nearest([...path.slice(0, i)].reverse(), parts);
    const after = nearest(path.slice(i + 1), parts);
    return before === null || after === null || before === after ? [] : [[before, after] as const];
  });
}

/** The first part on this side that the shield is tied to, up to the next plug. */
function nearest(stops: readonly Stop[], parts: PartIndex): string | null {
  for (const stop of stops) {
    if (stop.is === 'plug' || stop.is === 'unknown') return null;
    if (stop.is !== 'part' && stop.is !== 'bond') continue;
    const id = stop.at.part;
    if (id !== null && parts.get(id)?.section !== 'antennas') return carrierOf(id, parts);
  }
  return null;
}

/** An arrester stands for what it is bolted to. */
function carrierOf(id: string, parts: PartIndex): string {
  const part = parts.get(id);
  return part?.section === 'arresters' ? ((part as Arrester).on?.part ?? id) : id;
}
