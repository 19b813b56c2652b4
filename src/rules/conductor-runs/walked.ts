import type { ConductorFacts } from '../../facts/facts.ts';

/** Shorter leads, such as those from an arrester to its bar, make no pocket and are no trip wire: 12 in (ours). */
const shortM = 0.3048;

/**
 * Conductors of a lightning path that somebody can walk along: outdoors, above the soil, and longer than a short lead. One of
 * which a part lies in the soil counts where its owner `said` something of the part above.
 */
export function walkedConductors(
  conductors: readonly ConductorFacts[],
  said: (c: ConductorFacts) => boolean = () => false,
): readonly ConductorFacts[] {
  return conductors.filter((c) => {
    const isShort = c.lengthM !== null && c.lengthM.high <= shortM;
    const isAbove = c.inSoil !== 'yes' || said(c);
    return (c.lightningPath || c.role === 'down conductor') && isAbove && c.indoors !== 'yes' && !isShort;
  });
}
