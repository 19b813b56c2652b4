import type { ArresterFacts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

const unitKinds: readonly string[] = ['gas tube', 'quarter-wave stub', 'dc-blocked', 'spark gap', 'control protector'];
const antennaLines: readonly string[] = ['coax', 'open-wire', 'single wire'];

/** By its kind, or by the line that it stands in where its kind is free or not known. */
function isUnit({ part, lineKinds }: ArresterFacts): boolean {
  return unitKinds.includes(part.kind) || lineKinds.some((kind) => antennaLines.includes(kind));
}

export const dischargeUnitPlace = rule({
  id: 'discharge-unit-place',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '810.20(B)', provenance: 'second-hand' },
  needs: ['sections', 'arresters'],
  check({ sections, arresters }) {
    const units = arresters.filter(isUnit);
    if (units.length === 0) return nothingThere({ sections }, 'arresters');
    return units.map((a): Verdict => {
      const at = [a.id];
      if (a.where === null)
        return { is: 'cannot tell', at, because: { key: 'place unknown' }, settle: { key: 'say where' } };
      if (a.where === 'outside') return { is: 'met', at, because: { key: 'outside' } };
      return { is: 'not met', at, because: { key: 'inside' } };
    });
  },
});
