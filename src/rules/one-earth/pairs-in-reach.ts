import type { Site } from '../../site/site.ts';
import { type Interval, isAtMost } from '../../units/interval.ts';
import { onceFor } from '../../units/once-for.ts';
import { typedApart } from '../apart.ts';
import { armsReachM, isUntouched } from '../arms-reach.ts';
import { isShelter } from '../shelter-kinds.ts';
import { pulledPlugs } from './pulled-plugs.ts';

export type Pair = readonly [string, string];

/** Two things that one person can touch, and how that is known. */
export interface PairInReach {
  readonly pair: Pair;
  /** reach: typed; plug: by hand, on either side of it; near: within arm's reach, perhaps or certainly not. */
  readonly how: 'reach' | 'plug' | 'near' | 'perhaps near' | 'far';
  /** Where `near` says it. */
  readonly distanceM: Interval | null;
}

/**
 * What is typed as within reach, what a connector is pulled between, and shelters, vehicles and generators (in a field station
 * all that people touch) of which `near` says how far they are from each other. Each pair once.
 */
export const pairsInReach: (site: Site) => readonly PairInReach[] = onceFor((site) => {
  const parts = [
    ...site.electrodes,
    ...site.supports,
    ...site.bars,
    ...site.arresters,
    ...site.equipment,
    ...site.metalwork,
  ];
  const typed = parts.flatMap((p) => p.withinReach.map((other) => pairOf(p.id, other)));
  const plugs = pulledPlugs(site).map(([a, b]) => pairOf(a, b));
  const all = [
    ...nearPairs(site),
    ...plugs.map((pair): PairInReach => ({ pair, how: 'plug', distanceM: null })),
    ...typed.map((pair): PairInReach => ({ pair, how: 'reach', distanceM: null })),
  ];
  return [...new Map(all.map((p) => [p.pair.join('+'), p])).values()];
});

/** The two may each name the other: one pair. */
const pairOf = (a: string, b: string): Pair => (a < b ? [a, b] : [b, a]);

function nearPairs(site: Site): readonly PairInReach[] {
  const { temporary } = site.header;
  const things = [...site.supports, ...site.bars, ...site.equipment, ...site.metalwork].filter(
    (p) => p.present !== 'no' && !isUntouched(p.kind) && (temporary === 'yes' || isShelter(p.kind)),
  );
  const byId = new Map(things.map((p) => [p.id, p]));
  return things.flatMap((p) =>
    p.near.flatMap(({ part }) => {
      const other = byId.get(part);
      if (other === undefined) return [];
      const distanceM = typedApart(p, other);
      return [{ pair: pairOf(p.id, part), how: howNear(distanceM), distanceM }];
    }),
  );
}

function howNear(distanceM: Interval | null): PairInReach['how'] {
  const near = distanceM === null ? 'unknown' : isAtMost(distanceM, armsReachM);
  return near === 'yes' ? 'near' : near === 'no' ? 'far' : 'perhaps near';
}
