import type { ElectrodeFacts } from '../../facts/facts.ts';
import { isAtLeast } from '../../units/interval.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { isOfBuilding, ringsOf } from './rings.ts';

/** 30 in, 0.75 m, where it is an electrode of the service; 18 in, 0.45 m, for a ring of a tower or of lightning alone. */
const serviceM = 0.762;
const othersM = 0.4572;
const printedM = new Map([
  [serviceM, 0.75],
  [othersM, 0.45],
]);

export const ringDepthUs = rule({
  id: 'ring-depth-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70; NFPA 780', edition: null, clause: '250.53(F)', provenance: 'memory' },
  limits: [
    { key: 'depthM', value: serviceM, sense: 'least', of: 'ground ring of a service' },
    { key: 'depthM', value: othersM, sense: 'least', of: 'other rings' },
  ],
  needs: ['sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const rings = ringsOf(facts.electrodes);
    if (rings.length === 0) return nothingThere(facts, 'electrodes');
    return rings.map((e) => ofRing(e, isOfBuilding(e, facts) ? serviceM : othersM));
  },
});

function ofRing({ id, part }: ElectrodeFacts, limit: number): Verdict {
  const at = [id];
  const deep = part.depthM === null ? 'unknown' : isAtLeast(part.depthM, leastAsPrinted(limit, printedM.get(limit)!));
  if (part.depthM === null || deep === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'depth unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'depthM', value: part.depthM, limit, sense: 'least' } as const;
  if (deep === 'yes') return { is: 'met', at, because: { key: 'deep' }, measured };
  return { is: 'not met', at, because: { key: 'shallow' }, measured };
}
