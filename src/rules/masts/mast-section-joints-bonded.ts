import type { MastFacts } from '../../facts/facts.ts';
import { setFields } from '../changes/set-field.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const mastSectionJointsBonded = rule({
  id: 'mast-section-joints-bonded',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-1004/6', edition: null, clause: 'masts', provenance: 'read' },
  needs: ['sections', 'masts'],
  check({ sections, masts }) {
    const jointed = masts.filter((m) => m.metal !== 'no' && mayMove(m));
    if (jointed.length === 0) return nothingThere({ sections }, 'supports');
    return jointed.map((m): Verdict => {
      const at = [m.id];
      const { sections: made, jumpers } = m.part;
      const isRigid = made === 'one piece' || made === 'welded' || made === 'bolted';
      // how the tube of a mast with a hinge is made says nothing of the hinge
      if (isRigid && !moves(m)) return { is: 'met', at, because: { key: 'one metal' } };
      if (jumpers === 'yes') return { is: 'met', at, because: { key: 'jumpers' } };
      if (jumpers === 'no')
        return {
          is: 'not met',
          at,
          because: { key: 'no jumpers' },
          ...setFields('supports', m.id, { jumpers: 'yes' }),
        };
      return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
    });
  },
});

const moves = ({ part }: MastFacts) => part.kind === 'crank-up tower' || part.kind === 'tilt-over mast';

function mayMove(m: MastFacts): boolean {
  return moves(m) || m.part.sections === 'sliding' || m.part.sections === 'hinged';
}
