import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { iecMain } from './iec-main.ts';
import { lightningMains } from './lightning-mains.ts';

export const downConductorSizeIec = rule({
  id: 'down-conductor-size-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: 'Table 6', provenance: 'memory' },
  limits: [
    ...limitsOf(iecMain),
    { key: 'areaM2', value: iecMain.aluminiumStrap, sense: 'least', of: 'aluminium tape' },
  ],
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const mains = lightningMains(system, facts.conductors);
    if (mains.length === 0) return nothingThere(facts, 'conductors');
    return mains.map((c): Verdict => {
      const v = sectionVerdict(c, iecMain, 'mm2');
      return v.is === 'not met' ? { ...v, under: `antenna-earthing-size-iec:${c.id}` } : v;
    });
  },
});
