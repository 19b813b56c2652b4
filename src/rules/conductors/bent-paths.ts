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

/** A verdict for each conductor of a lightning path that has bends; not looked at where nobody typed any. */
export function bentPaths(
  { sections, conductors }: Pick<Facts, 'sections' | 'conductors'>,
  ofConductor: (c: ConductorFacts) => Verdict,
): readonly Verdict[] {
  const paths = conductors.filter((c) => c.lightningPath);
  const bent = paths.filter((c) => c.bends.length > 0);
  if (bent.length > 0) return bent.map(ofConductor);
  // that nobody typed any does not make a path straight; `bends: none` does
  if (paths.some((c) => !/^(?:none|\[\s*\])$/.test(c.part.typed.bends ?? '')))
    return [{ is: 'not looked at', because: { key: 'not typed' } }];
  return nothingThere({ sections }, 'conductors');
}
