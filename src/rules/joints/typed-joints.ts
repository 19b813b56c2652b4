import type { Facts, JointFacts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';

/** One verdict for each joint that the rule speaks of; none such: not applicable, or not looked at without conductors. */
export function eachJoint(
  { sections, joints }: Pick<Facts, 'sections' | 'joints'>,
  ofJoint: (joint: JointFacts) => Verdict | null,
): readonly Verdict[] {
  const verdicts = joints.flatMap((j) => ofJoint(j) ?? []);
  return verdicts.length > 0 ? verdicts : nothingThere({ sections }, 'conductors');
}
