import { claimsOf } from '../claims.ts';
import { rule } from '../rule.ts';
import { type Asking, bodiesBeside } from './side-flash.ts';
import { wiringBeside } from './wiring-beside.ts';

/** s = ki / km kc l: ki by class I to IV, km 1 through air and 0.5 through a wall, kc by the number of down conductors. */
const ki = { 1: 0.08, 2: 0.06, 3: 0.04, 4: 0.04 } as const;
const km = { air: 1, solid: 0.5 } as const;
const kcOf = (down: number) => (down <= 1 ? 1 : down === 2 ? 0.66 : 0.44);

export const separationDistanceIec = rule({
  id: 'separation-distance-iec',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '6.3, Tables 10 to 12', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const { lightningClass } = claimsOf(facts.header);
    const [least, most] = lightningClass === null ? [ki[4], ki[1]] : [ki[lightningClass], ki[lightningClass]];
    const asking: Asking = {
      countedM: Infinity,
      distanceM: (alongM, down) => ({
        low: (least / km.air) * kcOf(down.high) * alongM.low,
        high: (most / km.solid) * kcOf(down.low) * alongM.high,
      }),
    };
    const [bodies, wiring] = [bodiesBeside(facts, asking), wiringBeside(facts, asking)];
    // What there is no metal body for says nothing of the wiring.
    return wiring.length === 0 ? bodies : [...bodies.filter((v) => 'at' in v), ...wiring];
  },
});
