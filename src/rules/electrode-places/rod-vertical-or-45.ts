import type { Electrode } from '../../site/site.ts';
import { isAtLeast, isAtMost } from '../../units/interval.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { drivenRods, saidTopM } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

const mostDeg = 45;
/** Flat in a trench: 30 in, 0.75 m. */
const trenchM = 0.762;

export const rodVerticalOr45 = rule({
  id: 'rod-vertical-or-45',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2017', clause: '250.53(G)', provenance: 'read' },
  clauses: [
    { from: 0, clause: '250.53(G)' },
    { from: 2020, clause: '250.53(A)(4)' },
  ],
  limits: [
    { key: 'angleDeg', value: mostDeg, sense: 'most' },
    { key: 'depthM', value: trenchM, sense: 'least', of: 'a rod laid flat' },
  ],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    // A rod of whose angle nobody spoke was driven as rods are.
    const rods = drivenRods(electrodes).filter((e) => e.part.typed.angle !== undefined);
    return rods.length === 0 ? nothingThere({ sections }, 'electrodes') : rods.map((e) => ofRod(e.part));
  },
});

function ofRod(rod: Electrode): Verdict {
  const { id, angleDeg } = rod;
  const at = [id];
  // One laid flat is at grade only where somebody said so.
  const topM = saidTopM(rod);
  if (angleDeg === null) return { is: 'cannot tell', at, because: { key: 'angle unknown' }, settle: { key: 'look' } };
  const measured = { key: 'angleDeg', value: angleDeg, limit: mostDeg, sense: 'most' } as const;
  const steep = isAtMost(angleDeg, mostDeg);
  if (steep === 'yes') return { is: 'met', at, because: { key: 'steep' }, measured };
  const deep = topM === null ? 'unknown' : isAtLeast(topM, leastAsPrinted(trenchM, 0.75));
  if (deep === 'yes') return { is: 'met', at, because: { key: 'in a trench' } };
  if (steep === 'unknown' || deep === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'angle unknown' }, settle: { key: 'look' } };
  return { is: 'not met', at, because: { key: 'flat' }, measured };
}
