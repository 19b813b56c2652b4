import type { ConductorFacts } from '../../facts/facts.ts';
import { rule, type Verdict } from '../rule.ts';
import { bendSource, bentPaths } from './bent-paths.ts';

/** The included angle is at least 90°, so the run turns by at most this, degrees. */
const mostTurnDeg = 90;

export const bendAngle = rule({
  id: 'bend-angle',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: bendSource,
  limits: [{ key: 'turnDeg', value: mostTurnDeg, sense: 'most' }],
  needs: ['sections', 'conductors'],
  check: (facts) => bentPaths(facts, ofConductor),
});

function ofConductor(c: ConductorFacts): Verdict {
  const at = [c.id];
  const known = c.bends.flatMap((b) => (b.angleDeg === null ? [] : [b.angleDeg]));
  const worst = [...known].sort((a, b) => b.high - a.high)[0];
  const measured =
    worst === undefined
      ? {}
      : { measured: { key: 'turnDeg', value: worst, limit: mostTurnDeg, sense: 'most' } as const };
  if (known.some((a) => a.low > mostTurnDeg)) return { is: 'not met', at, because: { key: 'sharp' }, ...measured };
  if (known.length < c.bends.length || known.some((a) => a.high > mostTurnDeg)) {
    return { is: 'cannot tell', at, because: { key: 'angle unknown' }, settle: { key: 'measure it' }, ...measured };
  }
  return { is: 'met', at, because: { key: 'gentle' }, ...measured };
}
