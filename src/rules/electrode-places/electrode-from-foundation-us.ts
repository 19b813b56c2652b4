import { leastAsPrinted } from '../as-printed.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { courseOf, coursesApart, plan } from './plan-distance.ts';

/** 2 ft, 0.6 m, the least of three documents; two of them say 3 ft and 2 ft. */
const leastM = 0.6096;

export const electrodeFromFoundationUs = rule({
  id: 'electrode-from-foundation-us',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'TM 5-811-3; UFGS 13100N', edition: null, clause: 'distance from the wall', provenance: 'read' },
  limits: [{ key: 'distanceLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'electrodes', 'site'],
  check({ sections, electrodes, site }) {
    const walls = site.buildings.flatMap((b) => {
      const corners = (b.corners ?? []).map(plan);
      return corners.length < 3 ? [] : [[...corners, corners[0]!]];
    });
    // Of one typed as standing at a named corner nobody said how far from it.
    const placed = electrodes.filter((e) => e.part.place === null && courseOf(e.part).length > 0);
    const asked = placed.filter((e) => isAsked(e.part.kind, e.part.closed));
    if (asked.length === 0 || walls.length === 0) return nothingThere({ sections }, 'electrodes');
    return asked.map(({ id, part }): Verdict => {
      const at = [id];
      const value = Math.min(...walls.map((wall) => coursesApart(courseOf(part), wall)));
      const measured = { key: 'distanceLengthM', value, limit: leastM, sense: 'least' } as const;
      if (value >= leastAsPrinted(leastM, 0.6)) return { is: 'met', at, because: { key: 'clear' }, measured };
      return { is: 'not met', at, because: { key: 'at the wall' }, measured };
    });
  },
});

/** A wire that leads from one building to another has to meet a wall. */
const isAsked = (kind: string, closed: string) =>
  ['rod', 'plate'].includes(kind) || (kind === 'buried wire' && closed === 'yes');
