import { isAtMost } from '../../units/interval.ts';
import { setFields } from '../changes/set-field.ts';
import { ifSaid } from '../if-said.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { walkedConductors } from './walked.ts';

/** 3 ft, printed as 0.9 m. */
const mostM = 0.9144;

export const supportSpacing = rule({
  id: 'support-spacing',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'UFGS 13100A; NFPA 780', edition: null, clause: 'conductors', provenance: 'read' },
  limits: [{ key: 'spacingLengthM', value: mostM, sense: 'most' }],
  needs: ['sections', 'conductors'],
  check({ sections, conductors }) {
    const walked = walkedConductors(conductors);
    const said = conductors.flatMap(({ id, part }): readonly Verdict[] => {
      if (part.fixingsM == null) return [];
      const at = [id];
      const measured = { key: 'spacingLengthM', value: part.fixingsM, limit: mostM, sense: 'most' } as const;
      const close = isAtMost(part.fixingsM, mostM * 1.002);
      if (close === 'yes') return [{ is: 'met', at, because: { key: 'close' }, measured }];
      if (close === 'no')
        return [
          { is: 'not met', at, because: { key: 'far' }, measured, ...setFields('conductors', id, { fixings: '3 ft' }) },
        ];
      return [{ is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' }, measured }];
    });
    const unsaid = walked.filter((c) => c.part.fixingsM == null).map((c) => c.id);
    return said.length === 0 && unsaid.length === 0 ? nothingThere({ sections }, 'conductors') : ifSaid(said, unsaid);
  },
});
