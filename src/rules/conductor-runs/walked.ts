import type { ConductorFacts } from '../../facts/facts.ts';

/** Shorter leads, such as those from an arrester to its bar, make no pocket and are no trip wire: 12 in (ours). */
const shortM = 0.3048;

/** Conductors of a lightning path that somebody can walk along: outdoors, above the soil, and longer than a short lead. */
export function walkedConductors(conductors: readonly ConductorFacts[]): readonly ConductorFacts[] {
  return conductors.filter((c) => {
    const isShort = c.lengthM !== null && c.lengthM.high <= shortM;
    return (c.lightningPath || c.role === 'down conductor') && c.inSoil !== 'yes' && c.indoors !== 'yes' && !isShort;
  });
}
