import { rule } from '../rule.ts';
import { eachJoint } from './typed-joints.ts';

const fused: ReadonlySet<string> = new Set(['exothermic weld', 'welded', 'brazed']);

export const concealedJointWelded = rule({
  id: 'concealed-joint-welded',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: '1.2.4', provenance: 'read' },
  needs: ['sections', 'joints'],
  check: (facts) =>
    eachJoint(facts, ({ id, kind, buried, accessible }) => {
      const at = [id];
      // whether it lies in the soil, and of what kind it is, is asked by the rules on clamps and solder
      if (buried !== 'yes' || kind === null) return null;
      if (fused.has(kind)) return { is: 'met', at, because: { key: 'fused' } };
      if (accessible === 'yes') return { is: 'met', at, because: { key: 'in a well' } };
      return { is: 'not met', at, because: { key: 'clamp' } };
    }),
});
