import { limitsOf, sectionVerdict } from '../conductors/size-rule.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { lightningMains } from './lightning-mains.ts';

const least = { copper: 35e-6, aluminium: 70e-6, steel: null, cladSteel: null };

export const auDownConductor = rule({
  id: 'au-down-conductor',
  family: 'practice',
  severity: 'advice',
  codeSets: ['au'],
  source: { document: 'AS/NZS 1768', edition: null, clause: 'down conductors', provenance: 'second-hand' },
  limits: limitsOf(least),
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const mains = lightningMains(system, facts.conductors);
    return mains.length === 0 ? nothingThere(facts, 'conductors') : mains.map((c) => sectionVerdict(c, least, 'mm2'));
  },
});
