import type { Site } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';

/** Least length l1 of an electrode by class and resistivity, metres: IEC 62305-3:2010 figure 3, from memory. */
export function leastLength(lightningClass: 1 | 2 | 3 | 4, site: Pick<Site, 'soil'>): Interval {
  const soil = resistivity(site);
  const of = (rho: number) => lengthAt(lightningClass, rho);
  return { low: of(soil.low), high: of(soil.high) };
}

function lengthAt(lightningClass: 1 | 2 | 3 | 4, rho: number): number {
  if (lightningClass === 1 && rho > 500) return 0.03 * rho - 10;
  if (lightningClass === 2 && rho > 800) return 0.02 * rho - 11;
  return shortestM;
}

const shortestM = 5;

/** Of the uppermost layer; unknown: anything. */
function resistivity({ soil }: Pick<Site, 'soil'>): Interval {
  return soil?.layers[0]?.resistivityOhmM ?? { low: 0, high: Infinity };
}
