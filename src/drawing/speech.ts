import type { Study } from '../study/study.ts';
import type { Speech } from '../words/say.ts';
import { termsOf } from '../words/terms.ts';

/** Words and units that a study's region reads. */
export function speechOf(study: Study): Speech {
  return { terms: termsOf(study.site.region), unitsFirst: study.site.units === 'ft' ? 'us' : 'si' };
}
