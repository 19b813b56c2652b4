import type { Site } from '../site/site.ts';
import { meetingsOf } from './joint-id.ts';

/** Kind of each joint by its id: of the `joints` section, of conductors, of mounted parts; null where nobody knows it. */
export function jointKinds(site: Site): ReadonlyMap<string, string | null> {
  const kinds = new Map<string, string | null>();
  for (const c of site.conductors) {
    const { from, passes, splices, to } = meetingsOf(c);
    for (const { joint, use } of [from, ...passes, ...splices, to]) if (joint !== null) kinds.set(joint, use.kind);
  }
  for (const part of [...site.bars, ...site.arresters, ...site.equipment]) {
    if (part.on?.part != null) kinds.set(`${part.id}:${part.on.part}`, part.joint);
  }
  for (const joint of site.joints) kinds.set(joint.id, joint.kind === 'unknown' ? null : joint.kind);
  return kinds;
}
