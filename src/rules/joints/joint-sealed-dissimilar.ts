import type { JointFacts } from '../../facts/facts.ts';
import { ifSaid } from '../if-said.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const jointSealedDissimilar = rule({
  id: 'joint-sealed-dissimilar',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: '1.2.4', provenance: 'read' },
  needs: ['sections', 'joints'],
  check({ sections, joints }) {
    const asked = joints.filter((j) => j.buried === 'yes' && surfaces(j).size > 1);
    if (asked.length === 0) return nothingThere({ sections }, 'conductors');
    const said = asked.flatMap(({ id, sealed }): readonly Verdict[] => {
      if (sealed === 'unknown') return [];
      if (sealed === 'yes') return [{ is: 'met', at: [id], because: { key: 'sealed' } }];
      return [{ is: 'not met', at: [id], because: { key: 'open to water' } }];
    });
    return ifSaid(
      said,
      asked.filter((j) => j.sealed === 'unknown').map((j) => j.id),
    );
  },
});

/** Surfaces that meet there, as far as they are known: copper and copper-clad steel are alike. */
function surfaces(j: JointFacts): ReadonlySet<string> {
  return new Set([...j.wireMetals, j.onMetal, j.metal].flatMap((m) => m?.surface ?? []));
}
