import { limitsOf } from '../conductors/size-rule.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { mainSections, mainVerdict } from './by-height.ts';
import { lightningMains, structureHeight } from './lightning-mains.ts';

export const downConductorSizeUs = rule({
  id: 'down-conductor-size-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 780', edition: null, clause: 'material class tables', provenance: 'memory' },
  limits: [
    ...limitsOf(mainSections.low),
    ...limitsOf(mainSections.high).map((l) => ({ ...l, of: `${l.of}, above 75 ft` })),
  ],
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const mains = lightningMains(system, facts.conductors);
    const heightM = structureHeight(system, facts);
    return mains.length === 0 ? nothingThere(facts, 'conductors') : mains.map((c) => mainVerdict(c, heightM));
  },
});
