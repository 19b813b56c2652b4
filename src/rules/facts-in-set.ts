import type { Facts } from '../facts/facts.ts';
import { isAmerican } from '../site/is-american.ts';
import type { Region } from '../site/site.ts';

/** What a rule has read of the region whose set is asked: the more, the more sets it has to be asked for. */
export type RegionRead = 'nothing' | 'isAmerican' | 'region';

/** The facts as the rules of one code set read them. */
export interface FactsInSet {
  readonly set: Region;
  readonly facts: Facts;
  /** What has been read of the region since somebody set it to nothing. */
  readonly seen: { read: RegionRead };
}

/**
 * The same facts under a header that names the region whose set is asked, which on a site of several need not be its own. What
 * rules keep for these facts (onceFor) must not read the region: of who reads it second nobody would know.
 */
export function factsInSet(facts: Facts, set: Region): FactsInSet {
  const seen: FactsInSet['seen'] = { read: 'nothing' };
  const header = {
    ...facts.header,
    get region() {
      seen.read = 'region';
      return set;
    },
  };
  const american = isAmerican(set);
  const readAmerican = () => {
    if (seen.read === 'nothing') seen.read = 'isAmerican';
    return american;
  };
  const inSet = Object.defineProperties({} as Facts, {
    ...Object.getOwnPropertyDescriptors(facts),
    header: { enumerable: true, value: header },
    isAmerican: { enumerable: true, get: readAmerican },
  });
  return { set, facts: inSet, seen };
}
