import { partIndex } from '../../facts/part-index.ts';
import type { Site } from '../../site/site.ts';

/** Supports indoors that carry indoor antennas alone, at least one: what is asked of outdoor antennas is not asked of them. */
export function indoorMasts(site: Site): ReadonlySet<string> {
  const { whereOf } = partIndex(site);
  const isIndoors = (id: string) => ![null, 'outside'].includes(whereOf(id));
  const within = site.supports.filter((s) => {
    const carried = site.antennas.filter((a) => a.on?.part === s.id && a.present !== 'no');
    return isIndoors(s.id) && carried.length > 0 && carried.every((a) => isIndoors(a.id));
  });
  return new Set(within.map((s) => s.id));
}
