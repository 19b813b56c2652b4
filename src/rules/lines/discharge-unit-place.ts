import type { ArresterFacts } from '../../facts/facts.ts';
import { isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

const unitKinds: readonly string[] = ['gas tube', 'quarter-wave stub', 'dc-blocked', 'spark gap', 'control protector'];
const antennaLines: readonly string[] = ['coax', 'open-wire', 'single wire'];

/** By its kind, or by the line that it stands in where its kind is free or not known. */
function isUnit({ part, lineKinds }: ArresterFacts): boolean {
  return unitKinds.includes(part.kind) || lineKinds.some((kind) => antennaLines.includes(kind));
}

/** Ours: as near to the entry as practicable, metres (3 ft). */
const nearM = 1;

export const dischargeUnitPlace = rule({
  id: 'discharge-unit-place',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '810.20(B)', provenance: 'second-hand' },
  limits: [{ key: 'runLengthM', value: nearM, sense: 'most', of: 'indoors from the entry' }],
  needs: ['sections', 'arresters'],
  check({ sections, arresters }) {
    const units = arresters.filter(isUnit);
    if (units.length === 0) return nothingThere({ sections }, 'arresters');
    return units.map((a): Verdict => {
      const at = [a.id];
      if (a.where === null)
        return { is: 'cannot tell', at, because: { key: 'place unknown' }, settle: { key: 'say where' } };
      if (a.where === 'outside') return { is: 'met', at, because: { key: 'outside' } };
      return ofIndoors(a);
    });
  },
});

/** The clause lets one stand indoors, as near to the entry as practicable; how near nobody typed is no breach of it. */
function ofIndoors({ id, part: { fromEntryM = null } }: ArresterFacts): Verdict {
  const at = [id];
  if (fromEntryM === null) return { is: 'not met', at, because: { key: 'inside' }, severity: 'advice' };
  const measured = { key: 'runLengthM', value: fromEntryM, limit: nearM, sense: 'most' } as const;
  const near = isAtMost(fromEntryM, nearM);
  if (near === 'yes') return { is: 'met', at, because: { key: 'near the entry' }, measured };
  if (near === 'no') return { is: 'not met', at, because: { key: 'far inside' }, measured };
  return { is: 'cannot tell', at, because: { key: 'run unknown' }, settle: { key: 'measure it' }, measured };
}
