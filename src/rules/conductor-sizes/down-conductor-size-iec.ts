import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { lightningMains } from './lightning-mains.ts';

/** 50 mm² of each metal; aluminium as a tape 70 mm². */
const least = { copper: 50e-6, aluminium: 50e-6, steel: 50e-6, cladSteel: null, aluminiumStrap: 70e-6 };

export const downConductorSizeIec = rule({
  id: 'down-conductor-size-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: 'Table 6', provenance: 'memory' },
  limits: [...limitsOf(least), { key: 'areaM2', value: least.aluminiumStrap, sense: 'least', of: 'aluminium tape' }],
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const mains = lightningMains(system, facts.conductors);
    if (mains.length === 0) return nothingThere(facts, 'conductors');
    return mains.map((c): Verdict => {
      const v = sectionVerdict(c, least, 'mm2');
      return v.is === 'not met' ? { ...v, under: `antenna-earthing-size-iec:${c.id}` } : v;
    });
  },
});
