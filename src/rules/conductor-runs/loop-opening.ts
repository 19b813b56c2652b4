import type { ConductorFacts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** The open side exceeds this share of the length round the loop. */
const share = 1 / 8;

export const loopOpening = rule({
  id: 'loop-opening',
  family: 'practice',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'down conductors', provenance: 'read' },
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const looped = conductors.filter((c) => c.part.loop != null);
    return looped.length === 0 ? nothingThere({ sections }, 'conductors') : looped.map(ofLoop);
  },
});

function ofLoop(c: ConductorFacts): Verdict {
  const at = [c.id];
  const { openingM = null, lengthM = null } = c.part.loop ?? {};
  if (openingM === null || lengthM === null)
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'openingLengthM', value: openingM, limit: lengthM.high * share, sense: 'least' } as const;
  if (openingM.low > lengthM.high * share) return { is: 'met', at, because: { key: 'wide' }, measured };
  if (openingM.high <= lengthM.low * share) return { is: 'not met', at, because: { key: 'narrow' }, measured };
  return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' }, measured };
}
