import type { ConductorFacts } from '../../facts/facts.ts';
import { type Interval, isAtLeast } from '../../units/interval.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { rule, type Verdict } from '../rule.ts';
import { bendSource, bentPaths } from './bent-paths.ts';

/** 8 in. */
const leastM = 0.2;
/** 8 in is 0.2032 m, and the limit is printed as 0.20 m: either is met by either. */
const printedM = leastAsPrinted(0.2032, leastM);
/** The electrical code gives no radius for its thin antenna grounds: on wires thinner than 6 AWG it is advice. As printed. */
const heavyM2 = 13.3e-6 * (1 - 2e-3);

export const bendRadius = rule({
  id: 'bend-radius',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: bendSource,
  limits: [{ key: 'radiusLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'conductors'],
  check: (facts) => bentPaths(facts, ofConductor),
});

function ofConductor(c: ConductorFacts): Verdict {
  const at = [c.id];
  const known = c.bends.flatMap((b) => (b.radiusM === null ? [] : [b.radiusM]));
  const tight = known.filter((r) => r.high < printedM);
  const tightest = sharpest(tight.length > 0 ? tight : known);
  const measured =
    tightest === null
      ? {}
      : { measured: { key: 'radiusLengthM', value: tightest, limit: leastM, sense: 'least' } as const };
  if (tight.length > 0) {
    const isCodeGround = c.areaM2 !== null && isAtLeast(c.areaM2, heavyM2) === 'no';
    if (isCodeGround) return { is: 'not met', at, because: { key: 'tight' }, severity: 'advice', ...measured };
    return { is: 'not met', at, because: { key: 'tight' }, ...measured };
  }
  const all = known.length === c.bends.length && known.every((r) => r.low >= printedM);
  if (all) return { is: 'met', at, because: { key: 'wide' }, ...measured };
  return { is: 'cannot tell', at, because: { key: 'radius unknown' }, settle: { key: 'measure it' } };
}

function sharpest(radii: readonly Interval[]): Interval | null {
  return [...radii].sort((a, b) => a.low - b.low)[0] ?? null;
}
