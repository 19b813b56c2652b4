import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { ringsOf } from './rings.ts';

export const ringNotUnderRoofOrPaving = rule({
  id: 'ring-not-under-roof-or-paving',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'UFGS 13100N', edition: null, clause: 'counterpoise', provenance: 'read' },
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const said = ringsOf(electrodes).filter((e) => e.part.typed.surface !== undefined);
    if (said.length === 0) return nothingThere({ sections }, 'electrodes');
    return said.map(({ id, part }): Verdict => {
      const at = [id];
      if (part.surface === null)
        return { is: 'cannot tell', at, because: { key: 'nobody saw' }, settle: { key: 'look' } };
      if (part.surface === 'open ground') return { is: 'met', at, because: { key: 'open' } };
      return { is: 'not met', at, because: { key: part.surface === 'eaves' ? 'under eaves' : 'under paving' } };
    });
  },
});
