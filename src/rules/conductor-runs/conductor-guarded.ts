import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { isEnclosed } from './enclosure.ts';
import { walkedConductors } from './walked.ts';

export const conductorGuarded = rule({
  id: 'conductor-guarded',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'UL 96A; NFPA 70', edition: '2007', clause: '9.3.3; 250.64(B), 810.21(D)', provenance: 'read' },
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const asked = walkedConductors(conductors, (c) => c.part.guarded === 'no');
    if (asked.length === 0) return nothingThere({ sections }, 'conductors');
    return asked.map((c): Verdict => {
      const at = [c.id];
      if (c.part.guarded === 'yes') return { is: 'met', at, because: { key: 'guarded' } };
      if (c.part.guarded === 'no')
        return { is: 'not met', at, because: { key: 'open' }, ...setFields('conductors', c.id, { guarded: 'yes' }) };
      if (isEnclosed(c.part.enclosure)) return { is: 'met', at, because: { key: 'in a pipe' } };
      return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'walk' } };
    });
  },
});
