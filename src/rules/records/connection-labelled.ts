import type { Answer } from '../../site/site.ts';
import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const connectionLabelled = rule({
  id: 'connection-labelled',
  family: 'practice',
  severity: 'advice',
  codeSets: ['uk'],
  source: { document: 'BS 7671', edition: null, clause: '514.13', provenance: 'second-hand' },
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const main = conductors.filter((c) => c.role === 'service electrode wire' || c.part.typed.labelled !== undefined);
    return main.length === 0
      ? nothingThere({ sections }, 'conductors')
      : main.map((c) => ofWire(c.id, c.part.labelled));
  },
});

function ofWire(id: string, labelled: Answer | undefined): Verdict {
  if (labelled === 'yes') return { is: 'met', at: [id], because: { key: 'labelled' } };
  if (labelled === 'no')
    return {
      is: 'not met',
      at: [id],
      because: { key: 'no label' },
      ...setFields('conductors', id, { labelled: 'yes' }),
    };
  return { is: 'cannot tell', at: [id], because: { key: 'not seen' }, settle: { key: 'look' } };
}
