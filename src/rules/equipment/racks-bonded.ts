import type { Facts } from '../../facts/facts.ts';
import { bestCopper, copperSettles } from '../copper-section.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Least section of copper from a rack to the bar, square metres. */
const leastAreaM2 = 16e-6;
const racks: readonly string[] = ['rack', 'cabinet'];

export const racksBonded = rule({
  id: 'racks-bonded',
  family: 'code',
  severity: 'advice',
  codeSets: ['iec'],
  source: { document: 'EN 50310; ISO/IEC 30129', edition: '2016', clause: 'racks', provenance: 'second-hand' },
  limits: [{ key: 'areaM2', value: leastAreaM2, sense: 'least', of: 'copper' }],
  needs: ['sections', 'boxes', 'conductors'],
  check({ sections, boxes, conductors }) {
    const found = boxes.filter((b) => racks.includes(b.part.kind));
    if (found.length === 0) return nothingThere({ sections }, 'equipment');
    const verdicts = found.flatMap((b) => ofRack(b.id, conductors));
    return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'no conductor' } }];
  },
});

/** The thickest conductor on it; a rack without one is asked about like any other case. */
function ofRack(id: string, conductors: Facts['conductors']): readonly Verdict[] {
  const at = [id];
  const own = conductors.filter((c) => c.ends.includes(id) || c.passes.includes(id));
  if (own.length === 0) return [];
  const { is, ...figure } = bestCopper(own, leastAreaM2);
  if (is === 'enough') return [{ is: 'met', at, because: { key: 'thick' }, ...figure }];
  if (is === 'thin') return [{ is: 'not met', at, because: { key: 'thin' }, ...figure }];
  return [{ is: 'cannot tell', at, because: { key: is }, settle: { key: copperSettles[is] } }];
}
