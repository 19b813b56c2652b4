import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { farthestM, runVerdict } from './runs-bonded.ts';

const leastBonds = 1;

export const conduitBonded = rule({
  id: 'conduit-bonded',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'conduit', provenance: 'read' },
  limits: [{ key: 'spacingLengthM', value: farthestM, sense: 'most' }],
  needs: ['header', 'sections', 'conductors', 'site'],
  check(facts) {
    const runs = facts.site.metalwork.filter((m) => m.kind === 'conduit' && m.present !== 'no');
    return runs.length === 0 ? nothingThere(facts, 'metalwork') : runs.map((r) => runVerdict(r, facts, leastBonds));
  },
});
