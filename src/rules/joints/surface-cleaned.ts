import { joints as kinds } from '../../materials/joints.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const surfaceCleaned = rule({
  id: 'surface-cleaned',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. I', clause: '7.6', provenance: 'read' },
  needs: ['sections', 'joints'],
  check({ sections, joints }) {
    const pressed = joints.filter((j) => kinds.find((k) => k.name === j.kind)?.mechanical ?? j.cleaned !== 'unknown');
    if (pressed.length === 0) return nothingThere({ sections }, 'conductors');
    const said = pressed.flatMap(({ id, cleaned }): readonly Verdict[] => {
      if (cleaned === 'unknown') return [];
      if (cleaned === 'yes') return [{ is: 'met', at: [id], because: { key: 'clean' } }];
      return [{ is: 'not met', at: [id], because: { key: 'paint' } }];
    });
    // nobody remembers it of each of thirty lugs: only what was said is judged
    return said.length > 0 ? said : [{ is: 'not looked at', because: { key: 'nobody said' } }];
  },
});
