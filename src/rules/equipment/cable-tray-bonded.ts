import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { farthestM, runVerdict } from './runs-bonded.ts';

/** One at each end. */
const leastBonds = 2;

export const cableTrayBonded = rule({
  id: 'cable-tray-bonded',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'cable trays', provenance: 'read' },
  limits: [{ key: 'spacingLengthM', value: farthestM, sense: 'most' }],
  needs: ['header', 'sections', 'conductors', 'site'],
  check(facts) {
    const trays = facts.site.metalwork.filter((m) => m.kind === 'cable tray' && m.present !== 'no');
    if (trays.length === 0) return nothingThere(facts, 'metalwork');
    return trays.map((t) => runVerdict(t, facts, leastBonds));
  },
});
