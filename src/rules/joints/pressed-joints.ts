import type { Facts, JointFacts } from '../../facts/facts.ts';
import { jointKind } from '../../materials/joints.ts';
import type { Site } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';

type Asked = Pick<Facts, 'joints' | 'site'>;

/** Joints that press metal on metal. */
export function pressedJoints({ joints }: Asked): readonly JointFacts[] {
  return pressedOf(joints);
}

const pressedOf = onceFor((joints: Facts['joints']) =>
  joints.filter((j) => jointKind(j.kind)?.mechanical ?? j.cleaned !== 'unknown'),
);

/** At what is still to be built nobody can look: how it is made stands on the sheet for whoever builds it. */
export function isBuilt({ holds }: JointFacts, { site }: Asked): boolean {
  return holds.length === 0 || holds.some((id) => !plannedOf(site).has(id));
}

const plannedOf = onceFor(
  (site: Site): ReadonlySet<string> => new Set(site.conductors.filter((c) => c.known === 'planned').map((c) => c.id)),
);

/** Those of whose faces nobody spoke, in order: one look at each settles everything else about it too. */
export function unseenJoints(facts: Asked): readonly string[] {
  const unseen = pressedJoints(facts).filter((j) => j.cleaned === 'unknown' && isBuilt(j, facts));
  return [...new Set(unseen.map((j) => j.id))].sort();
}

/** The doubt of surface-cleaned, as the parent of another doubt about joints that all are among its own. */
export function underUnseen(facts: Asked, places: readonly string[]): { readonly under?: string } {
  const unseen = unseenJoints(facts);
  const among = new Set(unseen);
  const isAmong = places.length > 0 && places.every((id) => among.has(id));
  return isAmong ? { under: `surface-cleaned:${unseen.join('+')}` } : {};
}
