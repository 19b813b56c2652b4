import type { Answer, Antenna, Site } from '../site/site.ts';
import { isAtLeast, isAtMost } from '../units/interval.ts';

/** IEC 60728-11 (second-hand): at least this far below the edge of the roof, and at most this far out from the wall, metres. */
const leastBelowM = 2;
const mostOutM = 1.5;

/**
 * Supports on the face of a building: whether every antenna on one stays where no earthing conductor is asked. A bracket or
 * short mast there is one of these as soon as somebody typed either figure of an antenna on it.
 */
export function facadeExempt(site: Site): ReadonlyMap<string, Answer> {
  return new Map(
    site.supports.flatMap(({ id, kind }): [string, Answer][] => {
      const there = site.antennas.filter((a) => a.on?.part === id && a.present !== 'no');
      if (kind !== 'building face' && !there.some(isMeasured)) return [];
      const close = there.map(staysClose);
      if (close.includes('no')) return [[id, 'no']];
      return [[id, close.length > 0 && close.every((a) => a === 'yes') ? 'yes' : 'unknown']];
    }),
  );
}

const isMeasured = ({ belowRoofM = null, fromWallM = null }: Antenna) => belowRoofM !== null || fromWallM !== null;

function staysClose({ belowRoofM = null, fromWallM = null }: Antenna): Answer {
  const both: readonly Answer[] = [
    belowRoofM === null ? 'unknown' : isAtLeast(belowRoofM, leastBelowM * 0.998),
    fromWallM === null ? 'unknown' : isAtMost(fromWallM, mostOutM * 1.002),
  ];
  if (both.includes('no')) return 'no';
  return both.every((b) => b === 'yes') ? 'yes' : 'unknown';
}
