import type { JointFacts } from '../../facts/facts.ts';
import { galvanicDifferenceV, galvanicLimits } from '../../materials/galvanic-series.ts';
import { setJoint } from '../changes/set-joint.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { ifSaidOfJoints, isBuilt } from './pressed-joints.ts';

export const jointSealedDissimilar = rule({
  id: 'joint-sealed-dissimilar',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: '1.2.4', provenance: 'read' },
  needs: ['sections', 'joints', 'site'],
  check(facts) {
    const { joints, site } = facts;
    const asked = joints.filter((j) => j.buried === 'yes' && !fused.has(j.kind ?? '') && areFarApart(j));
    if (asked.length === 0) return nothingThere(facts, 'conductors');
    const said = asked.flatMap(({ id, sealed }): readonly Verdict[] => {
      if (sealed === 'unknown') return [];
      if (sealed === 'yes') return [{ is: 'met', at: [id], because: { key: 'sealed' } }];
      return [{ is: 'not met', at: [id], because: { key: 'open to water' }, ...setJoint(site, id, { sealed: 'yes' }) }];
    });
    const unsaid = asked.filter((j) => j.sealed === 'unknown' && isBuilt(j, facts)).map((j) => j.id);
    if (said.length === 0 && unsaid.length === 0) return [{ is: 'not applicable', because: { key: 'to be built' } }];
    return ifSaidOfJoints(said, unsaid, facts);
  },
});

const fused: ReadonlySet<string> = new Set(['exothermic weld', 'welded', 'brazed']);

/** Far apart in the galvanic series, as far as they are known: bronze and copper, plain or tinned, count as alike. */
function areFarApart(j: JointFacts): boolean {
  const metals = [...j.wireMetals, j.onMetal, j.metal].filter((m) => m !== null && m.name !== 'tinned copper');
  return metals.some((a) => metals.some((b) => (galvanicDifferenceV(a!, b!) ?? 0) > galvanicLimits.harshV));
}
