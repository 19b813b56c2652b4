import type { Conductor, JointUse, Part, Site } from '../site/site.ts';
import { jointMeant, meetingsOf } from './joint-id.ts';

/**
 * The same site with these gone: parts absent, guys taken off, joints open (`c1:E1`, `a1:entry`; of a named clamp its id). Names that the site has not
 * change nothing.
 */
export function loseParts(site: Site, lost: readonly string[]): Site {
  if (lost.length === 0) return site;
  const gone = new Set(lost.map((id) => jointMeant(site, id) ?? id));
  const without = <P extends Part>(parts: readonly P[]): readonly P[] =>
    parts.map((part) => (gone.has(part.id) ? { ...part, present: 'no' } : part));
  return {
    ...site,
    electrodes: without(site.electrodes),
    supports: without(site.supports).map((s) => ({ ...s, guys: s.guys.filter((guy) => !gone.has(guy.id)) })),
    antennas: without(site.antennas),
    bars: without(unbolted(site.bars, gone)),
    arresters: without(unbolted(site.arresters, gone)),
    equipment: without(unbolted(site.equipment, gone)),
    lines: without(site.lines),
    conductors: without(site.conductors.map((c) => openJoints(c, gone))),
    joints: without(site.joints),
    metalwork: without(unbolted(site.metalwork, gone)),
  };
}

/** What hung on something by a joint that is gone is not bonded to it any more. */
function unbolted<P extends Part>(parts: readonly P[], gone: ReadonlySet<string>): readonly P[] {
  const isLoose = ({ id, on }: P) => on?.part != null && gone.has(`${id}:${on.part}`);
  return parts.map((part) => (isLoose(part) ? { ...part, bonded: 'no' } : part));
}

function openJoints(c: Conductor, gone: ReadonlySet<string>): Conductor {
  const meetings = meetingsOf(c);
  const opened = (joint: string | null, use: JointUse): JointUse =>
    joint !== null && use.named === null && gone.has(joint) ? { ...use, condition: 'open' } : use;
  return {
    ...c,
    fromJoint: opened(meetings.from.joint, c.fromJoint),
    toJoint: opened(meetings.to.joint, c.toJoint),
    passes: c.passes.map((pass, i) => ({ ...pass, joint: opened(meetings.passes[i]!.joint, pass.joint) })),
    splices: c.splices.map((splice, i) => opened(meetings.splices[i]!.joint, splice)),
  };
}
