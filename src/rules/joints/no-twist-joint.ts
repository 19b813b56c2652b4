import { setJoint } from '../changes/set-joint.ts';
import { rule } from '../rule.ts';
import { eachJoint } from './typed-joints.ts';

export const noTwistJoint = rule({
  id: 'no-twist-joint',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'Army preventive maintenance monthly 599',
    edition: '2002',
    clause: 'clamps',
    provenance: 'read',
  },
  needs: ['header', 'sections', 'joints', 'site'],
  check: (facts) =>
    eachJoint(facts, ({ id, kind }) => {
      const at = [id];
      // a kind that nobody knows is asked by no-solder-in-path
      if (kind === null) return null;
      if (kind !== 'twist') return { is: 'met', at, because: { key: 'other' } };
      if (facts.header.temporary === 'yes') return { is: 'met', at, because: { key: 'temporary' } };
      return { is: 'not met', at, because: { key: 'twist' }, ...setJoint(facts.site, id, { kind: 'exothermic weld' }) };
    }),
});
