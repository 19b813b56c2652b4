import type { Facts } from '../../facts/facts.ts';
import type { Condition } from '../../site/site.ts';
import { rule, type Verdict } from '../rule.ts';

export const conditionSound = rule({
  id: 'condition-sound',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'IEC 62305-3; NFPA 780',
    edition: null,
    clause: 'E.7; annex D (inspection)',
    provenance: 'memory',
  },
  needs: ['site', 'joints'],
  check({ site, joints }) {
    const found = conditions(site, joints).flatMap(([id, condition]): readonly Verdict[] => {
      const at = [id];
      if (condition === 'sound') return [{ is: 'met', at, because: { key: 'sound' } }];
      if (condition === 'unknown') return [];
      return [{ is: 'not met', at, because: { key: condition }, severity: condition === 'open' ? 'hazard' : 'defect' }];
    });
    return found.length > 0 ? found : [{ is: 'not applicable', because: { key: 'none' } }];
  },
});

function conditions(site: Facts['site'], joints: Facts['joints']): readonly (readonly [string, Condition])[] {
  const parts = [
    ...site.electrodes,
    ...site.supports,
    ...site.bars,
    ...site.arresters,
    ...site.conductors,
    ...site.metalwork,
  ];
  return [...parts.map((p) => [p.id, p.condition] as const), ...joints.map((j) => [j.id, j.condition] as const)];
}
