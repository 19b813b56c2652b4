import type { Reading, Site } from '../../site/site.ts';

/** Readings of the resistance of an electrode or a system to earth. */
export function readingsOfEarth(site: Site): readonly Reading[] {
  return site.readings.filter((r) => r.kind === 'fall of potential' || r.kind === 'stakeless');
}
