import { facadeExempt } from '../facade-exempt.ts';
import { mayStandApart } from '../lightning/stands-apart.ts';
import { rule, type Verdict } from '../rule.ts';
import { mastsEarthed } from './earthed.ts';
import { indoorMasts } from './indoor-masts.ts';

export const iecMastEarthed = rule({
  id: 'iec-mast-earthed',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: { document: 'IEC 60728-11', edition: '2016, 2023', clause: 'outdoor antennas', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'masts', 'conductors', 'site'],
  check(facts) {
    const exempt = facadeExempt(facts.site);
    const indoors = indoorMasts(facts.site);
    const masts = facts.masts.filter((m) => !indoors.has(m.id));
    if (masts.length === 0 && indoors.size > 0) return [{ is: 'not applicable', because: { key: 'indoors' } }];
    const mayBeApart = mayStandApart(facts);
    return mastsEarthed(facts, masts).map((v): Verdict => {
      if (v.is !== 'not met') return v;
      const [mast = ''] = v.at;
      if (mayBeApart.has(mast))
        return { is: 'cannot tell', at: v.at, because: { key: 'under terminals' }, settle: { key: 'ask designer' } };
      const zone = exempt.get(mast) ?? 'no';
      if (zone === 'no') return v;
      if (zone === 'yes') return { is: 'met', at: v.at, because: { key: 'exempt' } };
      return { is: 'cannot tell', at: v.at, because: { key: 'on facade' }, settle: { key: 'measure facade' } };
    });
  },
});
