import { claimsOf } from '../claims.ts';
import { isWhole } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { lightningSystem } from './lightning-system.ts';
import { perimeterM } from './perimeter.ts';

/** Usual distance between down conductors by class I to IV, metres. */
const usualM = { 1: 10, 2: 10, 3: 15, 4: 20 } as const;
/** A usual distance is not a limit to the last centimetre: a fifth more is accepted (from memory). */
const leeway = 1.2;

export const downConductorSpacingIec = rule({
  id: 'down-conductor-spacing-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: 'Table 4', provenance: 'memory' },
  limits: [
    { key: 'spacingLengthM', value: usualM[1], sense: 'most', of: 'classes I and II' },
    { key: 'spacingLengthM', value: usualM[3], sense: 'most', of: 'class III' },
    { key: 'spacingLengthM', value: usualM[4], sense: 'most', of: 'class IV' },
  ],
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    if (facts.sections.buildings === 'none') return [{ is: 'not applicable', because: { key: 'no building' } }];
    const at = system.down.map((c) => c.id);
    const { lightningClass } = claimsOf(facts.header);
    const round = perimeterM(facts.site);
    if (lightningClass === null)
      return [{ is: 'cannot tell', at, because: { key: 'class unknown' }, settle: { key: 'ask class' } }];
    if (round === null || at.length === 0)
      return [{ is: 'cannot tell', at, because: { key: 'not typed' }, settle: { key: 'walk round' } }];
    const limit = usualM[lightningClass];
    const measured = { key: 'spacingLengthM', value: round / at.length, limit, sense: 'most' } as const;
    const isWide = measured.value > limit * leeway;
    if (isWide && !isWhole(facts, 'conductors'))
      return [{ is: 'cannot tell', at, because: { key: 'not typed' }, settle: { key: 'walk round' } }];
    if (isWide) return [{ is: 'not met', at, because: { key: 'wide' }, measured }];
    return [{ is: 'met', at, because: { key: 'close enough' }, measured }];
  },
});
