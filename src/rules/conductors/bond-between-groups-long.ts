import type { ConductorFacts } from '../../facts/facts.ts';
import { straightInductance } from '../../materials/straight-inductance.ts';
import { isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 20 ft, by analogy with the longest lead that NFPA 70 800.100(A)(4) allows a communications protector. */
const longM = 6.096;

const longRuns: ReadonlySet<string> = new Set(['electrode tie', 'bond', 'service electrode wire']);

export const bondBetweenGroupsLong = rule({
  id: 'bond-between-groups-long',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'ours, by analogy with NFPA 70 800.100(A)(4)', edition: null, clause: null, provenance: 'ours' },
  limits: [{ key: 'runLengthM', value: longM, sense: 'most' }],
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const ties = conductors.filter((c) => longRuns.has(c.role));
    return ties.length === 0 ? nothingThere({ sections }, 'conductors') : ties.map(ofTie);
  },
});

function ofTie(c: ConductorFacts): Verdict {
  const at = [c.id];
  if (c.lengthM === null)
    return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' } };
  const values = { inductanceH: straightInductance(c.wire, c.lengthM) };
  const measured = { key: 'runLengthM', value: c.lengthM, limit: longM, sense: 'most' } as const;
  const short = isAtMost(c.lengthM, longM * 1.002);
  if (short === 'yes') return { is: 'met', at, because: { key: 'short', values }, measured };
  if (short === 'no') return { is: 'not met', at, because: { key: 'long', values }, measured };
  return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' }, measured };
}
