import { partIndex } from '../../facts/part-index.ts';
import type { Site } from '../../site/site.ts';

/** A name that nothing in the file has: the one wished for, else with the first number that is free. */
export function freeId(site: Site, wished: string): string {
  const { buildings, places, states, readings } = site;
  const parts = partIndex(site);
  const isTaken = (id: string) =>
    parts.has(id) || [buildings, places, states, readings].some((section) => section.some((p) => p.id === id));
  // most names are plain, and the general pattern takes a millisecond to make ready
  const clean = /^[\w-]*$/.test(wished) ? wished : wished.replace(/[^\p{L}\p{M}\p{N}_-]+/gu, '-');
  for (let n = 1; ; n++) {
    const id = n === 1 ? clean : `${clean}-${n}`;
    if (!isTaken(id)) return id;
  }
}
