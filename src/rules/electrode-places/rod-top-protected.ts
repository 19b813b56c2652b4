import type { Electrode } from '../../site/site.ts';
import { drivenRods, saidTopM } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const rodTopProtected = rule({
  id: 'rod-top-protected',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2017', clause: '250.53(G)', provenance: 'read' },
  clauses: [
    { from: 0, clause: '250.53(G)' },
    { from: 2020, clause: '250.53(A)(4)' },
  ],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    // A top of which nobody spoke is taken at grade: nothing was seen of it.
    const rods = drivenRods(electrodes).filter((e) => e.part.typed.top !== undefined || e.part.guarded !== 'unknown');
    return rods.length === 0 ? nothingThere({ sections }, 'electrodes') : rods.map((e) => ofRod(e.part));
  },
});

function ofRod(rod: Electrode): Verdict {
  const { id, guarded } = rod;
  const at = [id];
  const topM = saidTopM(rod);
  if (guarded === 'yes') return { is: 'met', at, because: { key: 'guarded' } };
  if (topM !== null && topM.low >= 0) return { is: 'met', at, because: { key: 'flush' } };
  const isOut = topM !== null && topM.high < 0;
  if (isOut && guarded === 'no') return { is: 'not met', at, because: { key: 'stands out' } };
  return { is: 'cannot tell', at, because: { key: 'perhaps open' }, settle: { key: 'look' } };
}
