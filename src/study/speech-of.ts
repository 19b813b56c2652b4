import type { Site } from '../site/site.ts';
import type { Speech } from '../words/say.ts';
import { termsOf } from '../words/terms.ts';

/** Words and units that a site's region reads. */
export function speechOf(site: Site): Speech {
  const { region, units } = site.header;
  return { terms: termsOf(region), unitsFirst: units === 'ft' ? 'us' : 'si' };
}
