import type { Facts, JointFacts } from '../../facts/facts.ts';
import { jointKind } from '../../materials/joints.ts';
import type { Site } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';
import type { Verdict } from '../rule.ts';
import { isBehindCover } from './behind-cover.ts';

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

/** Those of whose faces nobody spoke. */
export const unseenJoints: (facts: Asked) => readonly string[] = onceFor((facts) =>
  pressedJoints(facts)
    .filter((j) => j.cleaned === 'unknown' && isBuilt(j, facts))
    .map((j) => j.id),
);

/**
 * What was said of some joints, and for all others one look, at those behind the cover of a panel one of an electrician. A
 * look at a joint settles everything else about it too: such a doubt stands beneath that of surface-cleaned.
 */
export function ifSaidOfJoints(
  said: readonly Verdict[],
  unsaid: readonly string[],
  facts: Asked,
  rule?: 'surface-cleaned',
): readonly Verdict[] {
  const [open, covered] = inReach(unsaid, facts).map((at, i): readonly Verdict[] => {
    if (at.length === 0) return [];
    const under = rule === undefined ? beneath(at, inReach(unseenJoints(facts), facts)[i]!) : {};
    return [{ is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: looks[i]! }, ...under }];
  });
  return [...said, ...open!, ...covered!];
}

const looks = ['look', 'look inside'] as const;

/** Each once, in order: those that anybody can look at, then those behind a cover. */
function inReach(ids: readonly string[], facts: Asked): readonly (readonly string[])[] {
  const covered = coveredIn(facts);
  const sorted = [...new Set(ids)].sort();
  return [sorted.filter((id) => !covered.has(id)), sorted.filter((id) => covered.has(id))];
}

const coveredIn = onceFor(
  ({ joints, site }: Asked): ReadonlySet<string> =>
    new Set(joints.filter((j) => isBehindCover(j, site)).map((j) => j.id)),
);

function beneath(at: readonly string[], unseen: readonly string[]): { readonly under?: string } {
  const among = new Set(unseen);
  return at.every((id) => among.has(id)) ? { under: `surface-cleaned:${unseen.join('+')}` } : {};
}
