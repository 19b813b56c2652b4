import { partIndex } from '../facts/part-index.ts';
import type { Site } from '../site/site.ts';
import { isAtMost } from '../units/interval.ts';
import { onceFor } from '../units/once-for.ts';

/** Two things this near to each other are touched at once, metres (IEC 60364-4-41, arm's reach, from memory). */
export const armsReachM = 2.5;

/** What nobody touches: a line of the plan, and a line overhead. */
export function isUntouched(kind: string): boolean {
  return kind === 'property line' || kind === 'overhead power line';
}

/**
 * Parts that somebody typed as within reach of another: by `within_reach`, or by `near` at no more than arm's reach; one that
 * is near at a distance nobody knows may be. Worked out once for a site.
 */
export const withinArmsReach: (site: Site) => ReadonlySet<string> = onceFor((site) => {
  const parts = partIndex(site);
  const isThere = (id: string) => parts.has(id) && !isUntouched(parts.get(id)!.kind);
  const pairs = parts.all.flatMap((p) => [
    ...p.withinReach.map((other) => [p.id, other] as const),
    ...p.near.filter(mayTouch).map((n) => [p.id, n.part] as const),
  ]);
  return new Set(pairs.filter((pair) => pair.every(isThere)).flat());
});

function mayTouch({ distanceM }: Site['metalwork'][number]['near'][number]): boolean {
  return distanceM === null || isAtMost(distanceM, armsReachM) !== 'no';
}
