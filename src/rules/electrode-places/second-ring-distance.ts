import type { ElectrodeFacts } from '../../facts/facts.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { courseOf, coursesApart, isInside } from './plan-distance.ts';
import { ringsOf } from './rings.ts';

/** 10 ft, 3.0 m. */
const leastM = 3.048;

export const secondRingDistance = rule({
  id: 'second-ring-distance',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'TM 5-811-3', edition: null, clause: 'second loop', provenance: 'read' },
  limits: [{ key: 'distanceLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const rings = ringsOf(electrodes).filter((e) => courseOf(e.part).length >= 4);
    const pairs = rings.flatMap((outer) =>
      rings.filter((inner) => goesRound(outer, inner)).map((inner) => [outer, inner] as const),
    );
    if (pairs.length === 0) return nothingThere({ sections }, 'electrodes');
    return pairs.map(([outer, inner]): Verdict => {
      const at = [outer.id, inner.id].sort();
      const value = coursesApart(courseOf(outer.part), courseOf(inner.part));
      const measured = { key: 'distanceLengthM', value, limit: leastM, sense: 'least' } as const;
      if (value >= leastAsPrinted(leastM, 3)) return { is: 'met', at, because: { key: 'far enough' }, measured };
      return { is: 'not met', at, because: { key: 'near' }, measured };
    });
  },
});

/** On the plan alone can it be told that one ring goes round another. */
function goesRound(outer: ElectrodeFacts, inner: ElectrodeFacts): boolean {
  return outer !== inner && courseOf(inner.part).every((p) => isInside(p, courseOf(outer.part)));
}
