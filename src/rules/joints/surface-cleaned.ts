import { setJoint } from '../changes/set-joint.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { ifSaidOfJoints, pressedJoints, unseenJoints } from './pressed-joints.ts';

export const surfaceCleaned = rule({
  id: 'surface-cleaned',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. I', clause: '7.6', provenance: 'read' },
  needs: ['sections', 'joints', 'site'],
  check(facts) {
    const pressed = pressedJoints(facts);
    if (pressed.length === 0) return nothingThere(facts, 'conductors');
    const said = pressed.flatMap(({ id, cleaned }): readonly Verdict[] => {
      if (cleaned === 'unknown') return [];
      if (cleaned === 'yes') return [{ is: 'met', at: [id], because: { key: 'clean' } }];
      return [{ is: 'not met', at: [id], because: { key: 'paint' }, ...setJoint(facts.site, id, { cleaned: 'yes' }) }];
    });
    const unsaid = unseenJoints(facts);
    if (said.length === 0 && unsaid.length === 0) return [{ is: 'not applicable', because: { key: 'to be built' } }];
    return ifSaidOfJoints(said, unsaid, facts, 'surface-cleaned');
  },
});
