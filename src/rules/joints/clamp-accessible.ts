import type { JointFacts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { ifSaidOfJoints, isBuilt } from './pressed-joints.ts';

export const clampAccessible = rule({
  id: 'clamp-accessible',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.68(A)', provenance: 'memory' },
  needs: ['sections', 'joints', 'site'],
  check(facts) {
    const { joints, site } = facts;
    const electrodes = new Set(site.electrodes.map((e) => e.id));
    const asked = joints.filter((j) => j.on !== null && electrodes.has(j.on) && !isExempt(j));
    if (asked.length === 0) return nothingThere(facts, 'conductors');
    const said = asked.flatMap((j) => ofJoint(j) ?? []);
    const unsaid = asked
      .filter((j) => j.accessible === 'unknown' && !isMadeForIt(j) && isBuilt(j, facts))
      .map((j) => j.id);
    if (said.length === 0 && unsaid.length === 0)
      return [{ is: 'not applicable', because: { key: 'made to be covered' } }];
    return ifSaidOfJoints(said, unsaid, facts);
  },
});

/** Made to be covered for good: a weld, a crimp that cannot be undone, or a clamp listed for the soil. */
function isMadeForIt({ kind, forBurial }: JointFacts): boolean {
  return kind === 'exothermic weld' || kind === 'irreversible crimp' || forBurial === 'yes';
}

function isExempt(j: JointFacts): boolean {
  return j.buried === 'yes' && isMadeForIt(j);
}

function ofJoint(j: JointFacts): Verdict | null {
  const at = [j.id];
  if (j.accessible === 'yes') return { is: 'met', at, because: { key: 'reachable' } };
  if (j.accessible === 'unknown') return null;
  if (j.buried === 'unknown' && isMadeForIt(j))
    return { is: 'cannot tell', at, because: { key: 'perhaps buried' }, settle: { key: 'look down' } };
  return { is: 'not met', at, because: { key: 'hidden' } };
}
