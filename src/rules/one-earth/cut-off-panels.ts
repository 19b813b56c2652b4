import type { BoxFacts, Facts } from '../../facts/facts.ts';
import type { Line } from '../../site/site.ts';
import { isWhole } from '../looked-at.ts';
import { reachedByCord } from '../reached-by-cord.ts';
import { homeOfService } from './home-of-service.ts';

/** Boxes on which a supply begins or is shared out. */
export const panels: readonly string[] = ['service panel', 'meter box', 'sub-panel', 'generator'];

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'boxes' | 'site'>;

/**
 * Panels of the file: those that a fault may come back to, and sub-panels that nothing surely brings back to a source, be it
 * a protective conductor, a bond, or a neutral that is bonded there. In the United States, where separate-building-electrode
 * asks of those that are not known to stand in the building of the service, and where nobody said whose clauses are asked,
 * these are roots.
 */
export function panelsOf(facts: Asked): { readonly roots: readonly BoxFacts[]; readonly cutOff: readonly BoxFacts[] } {
  const { header, bonding, boxes } = facts;
  const all = boxes.filter((b) => panels.includes(b.part.kind));
  const sources = all.filter((b) => b.part.kind !== 'sub-panel' || b.part.neutralBonded === 'yes').map((b) => b.id);
  const byCord = reachedByCord(facts, sources, false);
  const groups = new Set(sources.map((id) => bonding.groupOf.get(id)));
  const home = homeOfService(facts);
  const isElsewhere = ({ where }: BoxFacts) => where === null || where !== home;
  const isTiedBack = ({ id }: BoxFacts) =>
    sources.includes(id) ||
    byCord.has(id) ||
    groups.has(bonding.groupOf.get(id) ?? '') ||
    bonding.serviceBy.bondsAndCords.has(id);
  const isAskedElsewhere = header.region === 'us' || header.region === 'unknown';
  const isBack = (b: BoxFacts) => (isAskedElsewhere && isElsewhere(b)) || isTiedBack(b);
  return { roots: all.filter(isBack), cutOff: all.filter((b) => !isBack(b)) };
}

/** Whether a panel that is cut off may be tied back after all: by a feeder, a bond or a neutral of which nobody said. */
export function mayBeBack(panel: BoxFacts, cutOff: readonly BoxFacts[], facts: Asked): boolean {
  const { bonding, site } = facts;
  if (bonding.service.is === 'unknown' || !isWhole(facts, 'conductors')) return true;
  const near = reachedByCord(facts, [panel.id], true);
  const tied = cutOff.filter((b) => b === panel || near.has(b.id));
  if (tied.some((b) => b.part.neutralBonded !== 'no' || bonding.serviceBy.perhaps.has(b.id))) return true;
  const feeders = site.lines.filter((l) => isFeeder(l, tied, facts));
  return feeders.length === 0 || feeders.some((l) => l.protectiveConductor !== 'no');
}

/** A mains line from one of these to another panel, to the street or to nobody knows what. */
function isFeeder({ kind, present, path }: Line, tied: readonly BoxFacts[], { boxes }: Asked): boolean {
  if (kind !== 'mains' || present === 'no') return false;
  const ids = path.flatMap((s) =>
    s.is === 'part' ? [s.at.part] : s.is === 'street' || s.is === 'unknown' ? [null] : [],
  );
  if (!tied.some((b) => ids.includes(b.id))) return false;
  const others = boxes.filter((b) => panels.includes(b.part.kind) && !tied.includes(b)).map((b) => b.id);
  return ids.some((id) => id === null || others.includes(id));
}
