import type { Site } from '../../site/site.ts';

/** A name that nothing in the file has: the one wished for, else with the first number that is free. */
export function freeId(site: Site, wished: string): string {
  const taken = new Set(
    [
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
      site.buildings,
      site.places,
      site.states,
      site.readings,
    ].flatMap((section) => section.map((p) => p.id)),
  );
  const clean = wished.replace(/[^\p{L}\p{M}\p{N}_-]+/gu, '-');
  for (let n = 1; ; n++) {
    const id = n === 1 ? clean : `${clean}-${n}`;
    if (!taken.has(id)) return id;
  }
}
