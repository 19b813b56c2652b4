import { rule } from '../rule.ts';
import { iecSeparation } from './iec-separation.ts';
import { type Asking, bodiesBeside } from './side-flash.ts';
import { wiringBeside } from './wiring-beside.ts';

export const separationDistanceIec = rule({
  id: 'separation-distance-iec',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '6.3, Tables 10 to 12', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const asking: Asking = { countedM: Infinity, distanceM: iecSeparation(facts.header) };
    const [bodies, wiring] = [bodiesBeside(facts, asking), wiringBeside(facts, asking)];
    // What there is no metal body for says nothing of the wiring.
    return wiring.length === 0 ? bodies : [...bodies.filter((v) => 'at' in v), ...wiring];
  },
});
