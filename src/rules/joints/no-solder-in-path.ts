import { setJoint } from '../changes/set-joint.ts';
import { rule } from '../rule.ts';
import { lookAtJoint } from './behind-cover.ts';
import { eachJoint } from './typed-joints.ts';

export const noSolderInPath = rule({
  id: 'no-solder-in-path',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: {
    document: 'NFPA 70; MIL-HDBK-419A',
    edition: 'vol. II',
    clause: '250.8, 250.70; joints',
    provenance: 'read',
  },
  needs: ['sections', 'joints', 'site'],
  check: (facts) =>
    eachJoint(facts, (j) => {
      const { id, kind } = j;
      const at = [id];
      if (kind === 'solder')
        return {
          is: 'not met',
          at,
          because: { key: 'solder' },
          ...setJoint(facts.site, id, { kind: 'exothermic weld' }),
        };
      if (kind === null)
        return { is: 'cannot tell', at, because: { key: 'kind unknown' }, settle: { key: lookAtJoint(j, facts.site) } };
      return { is: 'met', at, because: { key: 'other', values: { kind } } };
    }),
});
