import type { ArresterFacts, Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { antennaUnits } from './antenna-units.ts';

export const dischargeUnitAwayFromFuel = rule({
  id: 'discharge-unit-away-from-fuel',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.20(B)', provenance: 'second-hand' },
  needs: ['sections', 'arresters', 'site'],
  check({ sections, arresters, site }) {
    const units = antennaUnits(arresters);
    if (units.length === 0) return nothingThere({ sections }, 'arresters');
    const verdicts = units.flatMap((a) => ofUnit(a, site));
    return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'nothing burns' } }];
  },
});

/** Asked of a unit of which somebody said it, of one indoors, and of one on a building that itself burns. */
function ofUnit({ id, part, where }: ArresterFacts, site: Facts['site']): readonly Verdict[] {
  const at = [id];
  if (part.nearFuel === 'no') return [{ is: 'met', at, because: { key: 'nothing near' } }];
  if (part.nearFuel === 'yes') return [{ is: 'not met', at, because: { key: 'near fuel' } }];
  const isIndoors = where !== null && where !== 'outside';
  const isBurning = site.buildings.some((b) => /thatch|straw|hay/i.test(`${b.roof ?? ''} ${b.walls ?? ''}`));
  const isTyped = 'near_fuel' in part.typed;
  if (!isIndoors && !isBurning && !isTyped) return [];
  return [{ is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } }];
}
