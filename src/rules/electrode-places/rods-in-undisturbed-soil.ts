import type { Electrode } from '../../site/site.ts';
import { add, isAtLeast, subtract } from '../../units/interval.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 6 ft, 1.8 m, of soil below a bed of gravel. */
const leastM = 1.8288;

export const rodsInUndisturbedSoil = rule({
  id: 'rods-in-undisturbed-soil',
  family: 'practice',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: null, clause: 'vol. II 1.2.4', provenance: 'read' },
  limits: [{ key: 'rodLengthM', value: leastM, sense: 'least', of: 'below gravel' }],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const said = electrodes.filter((e) => e.part.typed.stands_in !== undefined);
    return said.length === 0 ? nothingThere({ sections }, 'electrodes') : said.map((e) => ofElectrode(e.part));
  },
});

function ofElectrode(e: Electrode): Verdict {
  const at = [e.id];
  if (e.standsIn === null) return { is: 'cannot tell', at, because: { key: 'nobody saw' }, settle: { key: 'ask' } };
  if (e.standsIn === 'loose fill') return { is: 'not met', at, because: { key: 'loose' } };
  if (e.standsIn !== 'gravel') return { is: 'met', at, because: { key: 'firm' } };
  if (e.kind !== 'rod' && e.kind !== 'rods') return { is: 'not met', at, because: { key: 'wire in gravel' } };
  if (e.lengthM === null || e.topM === null || e.gravelM === null)
    return { is: 'cannot tell', at, because: { key: 'gravel unknown' }, settle: { key: 'ask how deep' } };
  const below = subtract(add(e.topM, e.lengthM), e.gravelM);
  const measured = { key: 'rodLengthM', value: below, limit: leastM, sense: 'least' } as const;
  const long = isAtLeast(below, leastAsPrinted(leastM, 1.8));
  if (long === 'yes') return { is: 'met', at, because: { key: 'through gravel' }, measured };
  if (long === 'no') return { is: 'not met', at, because: { key: 'in gravel' }, measured };
  return { is: 'cannot tell', at, because: { key: 'gravel unknown' }, settle: { key: 'ask how deep' } };
}
