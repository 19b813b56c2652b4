import { rule } from '../rule.ts';

export const fieldStormRule = rule({
  id: 'field-storm-rule',
  family: 'practice',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'memory' },
  needs: ['header'],
  check({ header: { temporary, stormPlan } }) {
    if (temporary === 'no') return [{ is: 'not applicable', because: { key: 'not temporary' } }];
    if (stormPlan === 'yes') return [{ is: 'met', at: [], because: { key: 'plan' } }];
    if (stormPlan === 'no' && temporary === 'yes') return [{ is: 'not met', at: [], because: { key: 'no plan' } }];
    return [{ is: 'cannot tell', at: [], because: { key: 'nobody said' }, settle: { key: 'write it' } }];
  },
});
