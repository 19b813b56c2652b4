import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import { isAtLeast } from '../../units/interval.ts';
import { printedShare } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { courseOf, coursesApart, type Plan } from './plan-distance.ts';
import { ringsOf, roundedBy } from './rings.ts';

/** About 1 m: taken as 0.6 to 3 m, the spread of the documents. */
const nearestM = 0.6;
const farthestM = 3;
const depthM = 0.5;

export const electrodeFromFoundationIec = rule({
  id: 'electrode-from-foundation-iec',
  family: 'practice',
  severity: 'advice',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '5.4.3', provenance: 'memory' },
  limits: [
    { key: 'depthM', value: depthM, sense: 'least' },
    { key: 'distanceLengthM', value: nearestM, sense: 'least' },
    { key: 'distanceLengthM', value: farthestM, sense: 'most' },
  ],
  needs: ['sections', 'electrodes', 'site'],
  check(facts) {
    const rings = ringsOf(facts.electrodes).filter((e) => roundedBy(e, facts).length > 0);
    return rings.length === 0 ? nothingThere(facts, 'electrodes') : rings.map((e) => ofRing(e, facts));
  },
});

function ofRing(e: ElectrodeFacts, facts: Pick<Facts, 'site'>): Verdict {
  const at = [e.id];
  const value = Math.min(...roundedBy(e, facts).map((walls) => coursesApart(courseOf(e.part), shut(walls))));
  if (value < nearestM * printedShare) {
    return {
      is: 'not met',
      at,
      because: { key: 'at the wall' },
      measured: { key: 'distanceLengthM', value, limit: nearestM, sense: 'least' },
    };
  }
  if (value > farthestM / printedShare) {
    return {
      is: 'not met',
      at,
      because: { key: 'far' },
      measured: { key: 'distanceLengthM', value, limit: farthestM, sense: 'most' },
    };
  }
  const depth = e.part.depthM;
  const deep = depth === null ? 'unknown' : isAtLeast(depth, depthM * printedShare);
  if (deep === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'depth unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'depthM', value: depth!, limit: depthM, sense: 'least' } as const;
  if (deep === 'no') return { is: 'not met', at, because: { key: 'shallow' }, measured };
  return { is: 'met', at, because: { key: 'as advised' }, measured };
}

const shut = (walls: readonly Plan[]) => [...walls, walls[0]!];
