import type { Answer, Antenna, Site } from '../site/site.ts';
import { isAtLeast, isAtMost } from '../units/interval.ts';
import { onFacade } from './facade-zone.ts';

/** IEC 60728-11 (second-hand): at least this far below the edge of the roof, and at most this far out from the wall, metres. */
const leastBelowM = 2;
const mostOutM = 1.5;

/** Supports on the face of a building: whether every antenna on one stays where no earthing conductor is asked. */
export function facadeExempt(site: Site): ReadonlyMap<string, Answer> {
  return new Map(
    [...onFacade(site)].map((id) => {
      const there = site.antennas.filter((a) => a.on?.part === id && a.present !== 'no').map(staysClose);
      if (there.includes('no')) return [id, 'no'];
      return [id, there.length > 0 && there.every((a) => a === 'yes') ? 'yes' : 'unknown'];
    }),
  );
}

function staysClose({ belowRoofM = null, fromWallM = null }: Antenna): Answer {
  const both: readonly Answer[] = [
    belowRoofM === null ? 'unknown' : isAtLeast(belowRoofM, leastBelowM * 0.998),
    fromWallM === null ? 'unknown' : isAtMost(fromWallM, mostOutM * 1.002),
  ];
  if (both.includes('no')) return 'no';
  return both.every((b) => b === 'yes') ? 'yes' : 'unknown';
}
