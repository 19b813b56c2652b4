import type { MastFacts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { indoorMasts } from '../masts/indoor-masts.ts';
import { rule, type Verdict } from '../rule.ts';

/** Nobody stands at the foot of these. */
const above: readonly string[] = ['roof mast', 'building face', 'tree', 'air terminal'];

/**
 * Within 3 m of a mast that is struck, people stand on ground of different voltages and may touch it. What counts: nobody
 * comes there, a warning, or 5 cm of asphalt or 15 cm of gravel underfoot (100 kilohm).
 */
export const stepAndTouchZone = rule({
  id: 'step-and-touch-zone',
  family: 'code',
  severity: 'hazard',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '8', provenance: 'memory' },
  needs: ['sections', 'masts', 'site'],
  check({ sections, masts, site }) {
    const indoors = indoorMasts(site);
    const reached = masts.filter((m) => m.metal !== 'no' && !above.includes(m.part.kind) && !indoors.has(m.id));
    if (reached.length === 0) return nothingThere({ sections }, 'supports');
    return reached.map(ofMast);
  },
});

function ofMast({ id, part }: MastFacts): Verdict {
  const at = [id];
  const { reach, insulatingSurface } = part;
  if (reach === 'fenced') return { is: 'met', at, because: { key: 'fenced' } };
  if (reach === 'signed') return { is: 'met', at, because: { key: 'signed' } };
  if (insulatingSurface === 'yes') return { is: 'met', at, because: { key: 'surfaced' } };
  if (reach === 'public' && insulatingSurface === 'no') return { is: 'not met', at, because: { key: 'open' } };
  if (reach === 'public')
    return { is: 'cannot tell', at, because: { key: 'surface unknown' }, settle: { key: 'look down' } };
  if (insulatingSurface === 'no')
    return { is: 'cannot tell', at, because: { key: 'reach unknown' }, settle: { key: 'look about' } };
  return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
}
