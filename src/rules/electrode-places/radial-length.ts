import { isAtLeast } from '../../units/interval.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { routeLength } from '../electrode-sizes/route-length.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 12 ft, 3.6 m. */
const leastM = 3.6576;

export const radialLength = rule({
  id: 'radial-length',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'TM 5-811-3; NFPA 780', edition: null, clause: 'radials', provenance: 'read' },
  limits: [{ key: 'runLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const radials = electrodes.filter((e) => e.part.kind === 'radial');
    if (radials.length === 0) return nothingThere({ sections }, 'electrodes');
    return radials.map(({ id, part }): Verdict => {
      const at = [id];
      const value = part.lengthM ?? routeLength(part);
      const long = value === null ? 'unknown' : isAtLeast(value, leastAsPrinted(leastM, 3.6));
      if (value === null || long === 'unknown')
        return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' } };
      const measured = { key: 'runLengthM', value, limit: leastM, sense: 'least' } as const;
      if (long === 'yes') return { is: 'met', at, because: { key: 'long enough' }, measured };
      return { is: 'not met', at, because: { key: 'short' }, measured };
    });
  },
});
