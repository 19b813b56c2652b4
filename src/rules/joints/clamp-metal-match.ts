import type { JointFacts } from '../../facts/facts.ts';
import { jointKind } from '../../materials/joints.ts';
import type { Site } from '../../site/site.ts';
import { setJoint } from '../changes/set-joint.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { familiesAt } from './metal-family.ts';
import { ifSaidOfJoints, isBuilt } from './pressed-joints.ts';

export const clampMetalMatch = rule({
  id: 'clamp-metal-match',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.70', provenance: 'second-hand' },
  needs: ['sections', 'joints', 'site'],
  check(facts) {
    const { joints, site } = facts;
    const electrodes = new Set(site.electrodes.map((e) => e.id));
    const clamps = joints.filter((j) => j.on !== null && electrodes.has(j.on) && isClamp(j));
    if (clamps.length === 0) return nothingThere(facts, 'conductors');
    const known = clamps.filter((j) => j.metal !== null);
    // a clamp that is listed is listed for its metals, unless its own metal says otherwise
    const unsaid = clamps.filter((j) => j.metal === null && j.listed !== 'yes' && isBuilt(j, facts)).map((j) => j.id);
    if (known.length === 0 && unsaid.length === 0)
      return clamps.map((j): Verdict => ({ is: 'met', at: [j.id], because: { key: 'listed' } }));
    return ifSaidOfJoints(
      known.map((j) => ofClamp(j, site)),
      unsaid,
      facts,
    );
  },
});

function isClamp({ kind }: JointFacts): boolean {
  return jointKind(kind)?.mechanical ?? false;
}

function ofClamp(j: JointFacts, site: Site): Verdict {
  const at = [j.id];
  if (isZincOnCopper(j))
    return { is: 'not met', at, because: { key: 'zinc' }, ...setJoint(site, j.id, { metal: 'bronze', listed: 'yes' }) };
  if (j.listed === 'yes') return { is: 'met', at, because: { key: 'listed' } };
  if (!isMixed(j)) return { is: 'met', at, because: { key: 'match' } };
  if (j.listed === 'unknown') return { is: 'cannot tell', at, because: { key: 'mixed' }, settle: { key: 'look' } };
  return { is: 'not met', at, because: { key: 'not for both' }, under: `joint-method-allowed:${j.id}` };
}

/** Of another metal than what it joins, or of zinc, which goes with zinc alone, on what nobody named. */
function isMixed(j: JointFacts): boolean {
  const { joined, clamp } = familiesAt(j);
  if (clamp === null || clamp === 'other') return false;
  const isOpen = [...j.wireMetals, j.onMetal].includes(null);
  return (clamp === 'zinc' && isOpen) || [...joined].some((family) => family !== clamp && family !== 'other');
}

/** A clamp of zinc or zinc-coated steel on a copper rod or wire. */
export function isZincOnCopper(j: JointFacts): boolean {
  const { joined, clamp } = familiesAt(j);
  return clamp === 'zinc' && joined.has('copper');
}
