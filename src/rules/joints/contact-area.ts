import type { JointFacts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import type { Site } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { lookAtJoint } from './behind-cover.ts';
import { ifSaidOfJoints, isBuilt } from './pressed-joints.ts';

/** 3 square inches, square metres; printed as 19.5 cm². */
const leastM2 = 19.35e-4;

export const contactArea = rule({
  id: 'contact-area',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'joints', provenance: 'read' },
  limits: [{ key: 'contactAreaM2', value: leastM2, sense: 'least' }],
  needs: ['sections', 'joints', 'site'],
  check(facts) {
    const { joints, site } = facts;
    const said = joints.flatMap((j): readonly Verdict[] => {
      const { id, contactM2 } = j;
      if (contactM2 === null) return [];
      const at = [id];
      const measured = { key: 'contactAreaM2', value: contactM2, limit: leastM2, sense: 'least' } as const;
      const enough = isAtLeast(contactM2, leastM2 * (1 - 2e-3));
      if (enough === 'yes') return [{ is: 'met', at, because: { key: 'wide' }, measured }];
      if (enough === 'no') return [{ is: 'not met', at, because: { key: 'narrow' }, measured }];
      return [
        { is: 'cannot tell', at, because: { key: 'not exact' }, settle: { key: lookAtJoint(j, site) }, measured },
      ];
    });
    const unsaid = joints
      .filter((j) => j.contactM2 === null && liesFlat(j, site) && isBuilt(j, facts))
      .map((j) => j.id);
    if (said.length === 0 && unsaid.length === 0) return nothingThere(facts, 'conductors');
    return ifSaidOfJoints(said, unsaid, facts);
  },
});

const flat: ReadonlySet<string> = new Set(['bars', 'equipment', 'metalwork', 'supports']);

/** A lug under a bolt on a bar, a box, a frame or a leg; on a rod or a wire it lies on no flat face. */
function liesFlat({ kind, on }: JointFacts, site: Site): boolean {
  return kind === 'bolted lug' && flat.has(partIndex(site).get(on ?? '')?.section ?? '');
}
