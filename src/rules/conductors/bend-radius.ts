import type { ConductorFacts } from '../../facts/facts.ts';
import type { Interval } from '../../units/interval.ts';
import { rule, type Verdict } from '../rule.ts';
import { bendSource, bentPaths } from './bent-paths.ts';

/** 8 in. */
const leastM = 0.2;
/** 8 in is 0.2032 m, and the limit is printed as 0.20 m: either is met by either. */
const printedShare = 1 - 2e-2;

export const bendRadius = rule({
  id: 'bend-radius',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: bendSource,
  needs: ['sections', 'conductors'],
  check: (facts) => bentPaths(facts, ofConductor),
});

function ofConductor(c: ConductorFacts): Verdict {
  const at = [c.id];
  const known = c.bends.flatMap((b) => (b.radiusM === null ? [] : [b.radiusM]));
  const tight = known.filter((r) => r.high < leastM * printedShare);
  const tightest = sharpest(tight.length > 0 ? tight : known);
  const measured =
    tightest === null
      ? {}
      : { measured: { key: 'radiusLengthM', value: tightest, limit: leastM, sense: 'least' } as const };
  if (tight.length > 0) return { is: 'not met', at, because: { key: 'tight' }, ...measured };
  const all = known.length === c.bends.length && known.every((r) => r.low >= leastM * printedShare);
  if (all) return { is: 'met', at, because: { key: 'wide' }, ...measured };
  return { is: 'cannot tell', at, because: { key: 'radius unknown' }, settle: { key: 'measure it' } };
}

function sharpest(radii: readonly Interval[]): Interval | null {
  return [...radii].sort((a, b) => a.low - b.low)[0] ?? null;
}
