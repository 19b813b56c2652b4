import type { Conductor } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const photoBeforeBackfill = rule({
  id: 'photo-before-backfill',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-419A', edition: null, clause: 'vol. II 1.2.4', provenance: 'read' },
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const buried = site.conductors.filter(
      (c) => c.buriedM !== null && c.buriedM !== 'no' && c.present !== 'no' && isDone(c),
    );
    // Whoever names no photograph of a trench keeps none here: nothing is asked of each wire.
    const isKept = buried.some((c) => c.typed.photo !== undefined);
    if (buried.length === 0) return nothingThere({ sections }, 'conductors');
    return isKept ? buried.map(ofWire) : [{ is: 'not applicable', because: { key: 'no photograph' } }];
  },
});

/** What is still to be laid cannot have been photographed. */
const isDone = ({ known, photo }: Conductor) => known !== 'planned' || photo.length > 0;

function ofWire({ id, photo, typed }: Conductor): Verdict {
  if (photo.length > 0) return { is: 'met', at: [id], because: { key: 'taken' } };
  if (typed.photo === 'none') return { is: 'not met', at: [id], because: { key: 'not taken' } };
  return { is: 'cannot tell', at: [id], because: { key: 'not named' }, settle: { key: 'find it' } };
}
