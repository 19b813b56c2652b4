import { rule } from '../rule.ts';
import { lookAtJoint } from './behind-cover.ts';
import { copperOnAluminium } from './copper-on-aluminium.ts';
import { eachJoint } from './typed-joints.ts';

export const noCopperAluminiumContact = rule({
  id: 'no-copper-aluminium-contact',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'joints', provenance: 'read' },
  needs: ['sections', 'joints', 'site'],
  check: (facts) =>
    eachJoint(facts, (j) => {
      const at = [j.id];
      const key = copperOnAluminium(j);
      if (key === null) return null;
      if (key === 'contact') return { is: 'not met', at, because: { key } };
      if (key === 'nobody said')
        return { is: 'cannot tell', at, because: { key }, settle: { key: lookAtJoint(j, facts.site) } };
      return { is: 'met', at, because: { key } };
    }),
});
