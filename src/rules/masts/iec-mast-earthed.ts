import { onFacade } from '../facade-zone.ts';
import { rule, type Verdict } from '../rule.ts';
import { mastsEarthed } from './earthed.ts';

export const iecMastEarthed = rule({
  id: 'iec-mast-earthed',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: { document: 'IEC 60728-11', edition: '2016, 2023', clause: 'outdoor antennas', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'masts', 'site'],
  check(facts) {
    const facade = onFacade(facts.site);
    return mastsEarthed(facts).map((v): Verdict => {
      if (v.is !== 'not met' || !v.at.every((id) => facade.has(id))) return v;
      return { is: 'cannot tell', at: v.at, because: { key: 'on facade' }, settle: { key: 'measure facade' } };
    });
  },
});
