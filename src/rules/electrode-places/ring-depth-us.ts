import type { ElectrodeFacts } from '../../facts/facts.ts';
import { isAtLeast } from '../../units/interval.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { isOfBuilding, ringsOf } from './rings.ts';

/** 30 in, 0.75 m, where it is an electrode of the service; 18 in, 0.45 m, for a ring of a tower or of lightning alone. */
const service = { us: 0.762, si: 0.75 };
const others = { us: 0.4572, si: 0.45 };

export const ringDepthUs = rule({
  id: 'ring-depth-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70; NFPA 780', edition: null, clause: '250.53(F)', provenance: 'memory' },
  limits: [
    { key: 'depthM', value: service.us, sense: 'least', of: 'ground ring of a service' },
    { key: 'depthM', value: others.us, sense: 'least', of: 'other rings' },
  ],
  needs: ['sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const rings = ringsOf(facts.electrodes);
    if (rings.length === 0) return nothingThere(facts, 'electrodes');
    return rings.map((e) => ofRing(e, isOfBuilding(e, facts) ? service : others));
  },
});

function ofRing({ id, part }: ElectrodeFacts, { us, si }: typeof service): Verdict {
  const at = [id];
  const deep = part.depthM === null ? 'unknown' : isAtLeast(part.depthM, leastAsPrinted(us, si));
  if (part.depthM === null || deep === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'depth unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'depthM', value: part.depthM, limit: us, sense: 'least' } as const;
  if (deep === 'yes') return { is: 'met', at, because: { key: 'deep' }, measured };
  return { is: 'not met', at, because: { key: 'shallow' }, measured };
}
