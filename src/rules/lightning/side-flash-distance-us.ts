import { rule } from '../rule.ts';
import { bodiesBeside } from './side-flash.ts';

/** D = h / (6 n) Km: n by the number of down conductors, Km 1 through air and 0.5 through brick, wood or concrete. */
const sixth = 1 / 6;
const km = { air: 1, solid: 0.5 } as const;
/** Down conductors within this share the current, metres (100 ft as printed). */
const countedM = 30.48;
const nOf = (down: number) => (down <= 1 ? 1 : down === 2 ? 1.5 : 2.25);

export const sideFlashDistanceUs = rule({
  id: 'side-flash-distance-us',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 780', edition: '2014 to 2020', clause: '4.16', provenance: 'memory' },
  needs: ['header', 'sections', 'bonding', 'conductors', 'site'],
  check: (facts) =>
    bodiesBeside(facts, {
      countedM,
      // nobody said what lies between: less is asked through a wall
      distanceM: (alongM, down) => ({
        low: alongM.low * (sixth / nOf(down.high)) * km.solid,
        high: alongM.high * (sixth / nOf(down.low)) * km.air,
      }),
    }),
});
