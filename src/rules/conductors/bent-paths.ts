import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';

/** Where the two conditions on bends of down conductors were read. */
export const bendSource = {
  document: 'MIL-HDBK-419A; NFPA 780',
  edition: 'vol. II',
  clause: 'down conductors; 4.9.5',
  provenance: 'read',
} as const;

/** A verdict for each conductor of a lightning path that has bends. */
export function bentPaths(
  { sections, conductors }: Pick<Facts, 'sections' | 'conductors'>,
  ofConductor: (c: ConductorFacts) => Verdict,
): readonly Verdict[] {
  const bent = conductors.filter((c) => c.lightningPath && c.bends.length > 0);
  return bent.length === 0 ? nothingThere({ sections }, 'conductors') : bent.map(ofConductor);
}
