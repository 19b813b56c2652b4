import type { Electrode, RoutePoint } from '../site/site.ts';
import type { OpenRing } from './bonding.ts';
import { meetingsOf } from './joint-id.ts';
import { openWireRings } from './open-wire-rings.ts';
import type { SiteIndex } from './site-index.ts';

/**
 * Rings that are drawn closed and are not, or of which nobody can tell: a buried wire that its owner calls closed, or whose route comes
 * back to where it began; and conductors that go round from electrode to electrode and lack one. By id.
 */
export function openRings(index: SiteIndex): readonly OpenRing[] {
  const used = jointsOfWires(index);
  const buried = index.site.electrodes.flatMap((e): readonly OpenRing[] => {
    const why = e.present === 'no' ? null : whyOpen(index, e, used);
    return why === null ? [] : [{ at: e.id, why }];
  });
  return [...buried, ...openWireRings(index)].sort((a, b) => (a.at < b.at ? -1 : 1));
}

function whyOpen(index: SiteIndex, e: Electrode, used: ReadonlySet<string>): OpenRing['why'] | null {
  if (e.closed === 'yes') return e.condition === 'open' ? 'not closed' : whyNotWhole(index, e, used);
  if (comesBack(e.route)) return e.closed === 'no' ? 'not closed' : 'unknown';
  // A wire of which nothing is said is a wire; one whose owner wrote that he does not know may be a ring.
  return e.closed === 'unknown' && e.typed.closed !== undefined ? 'unknown' : null;
}

/** The ring's own joints are those on it that hold no conductor: they join its ends. */
function whyNotWhole({ site }: SiteIndex, ring: Electrode, used: ReadonlySet<string>): OpenRing['why'] | null {
  const own = site.joints.filter((joint) => joint.on?.part === ring.id && !used.has(joint.id));
  if (own.some((joint) => joint.condition === 'open' || joint.present === 'no')) return 'not closed';
  return own.some((joint) => joint.present === 'unknown') ? 'unknown' : null;
}

function jointsOfWires({ site }: SiteIndex): ReadonlySet<string> {
  const meetings = site.conductors.map(meetingsOf);
  const joints = meetings.flatMap((m) => [m.from, ...m.passes, ...m.splices, m.to].map((meeting) => meeting.joint));
  const landed = site.conductors.flatMap((c) => [c.from.part, c.to.part, ...c.passes.map((pass) => pass.at.part)]);
  return new Set([...joints, ...landed].filter((id) => id !== null));
}

function comesBack(route: readonly RoutePoint[] | null): boolean {
  if (route === null || route.length < 4) return false;
  const [first, last] = [route[0]!, route.at(-1)!];
  if (first.part !== null && last.part !== null) return first.part.text === last.part.text;
  const [a, b] = [first.position, last.position];
  return a !== null && b !== null && a[0] === b[0] && a[1] === b[1];
}
