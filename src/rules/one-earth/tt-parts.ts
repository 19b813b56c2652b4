import type { Facts } from '../../facts/facts.ts';
import { type PartIndex, partIndex } from '../../facts/part-index.ts';
import type { Equipment, Line } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';
import { neighbours, reachedFrom } from '../neighbours.ts';
import { panels } from './cut-off-panels.ts';

export type Asked = Pick<Facts, 'bonding' | 'site'>;

/** A part of a site that stands on a TT supply, where the supply of the site is of another kind. */
export interface TtPart {
  readonly panel: string;
  /** Group of the panel; null: a feeder of which nobody said may bring the service's earth, so that it is perhaps no TT part. */
  readonly own: string | null;
  /** Groups and single parts that may belong to it. */
  readonly perhaps: ReadonlySet<string>;
  /** What stands in the building of the panel and hangs on the service all the same. */
  readonly beside: readonly string[];
}

/** Group of a part, else the part itself. */
export const nameIn = ({ bonding }: Asked, part: string): string => bonding.groupOf.get(part) ?? part;

/**
 * Panels that are typed so and fed without a protective conductor. Such a part is accepted in place of a bond, where nothing
 * joins or brings within reach what stands on the two sides; a bond between them would carry faults of the supplier's neutral
 * there.
 */
export const ttParts: (facts: Asked) => readonly TtPart[] = onceFor((facts) => {
  const { bonding, site } = facts;
  if (site.header.supply === 'tt' || bonding.service.is === 'none') return [];
  const typed = site.equipment.filter((e) => e.supply === 'tt' && e.present !== 'no');
  return typed.flatMap((panel): readonly TtPart[] => {
    const brings = bringsEarth(panel, facts);
    if (brings === 'yes' || bonding.serviceBy.bonds.has(panel.id)) return [];
    const own = nameIn(facts, panel.id);
    const perhaps = looseParts(panel, own, facts);
    return [{ panel: panel.id, own: brings === 'no' ? own : null, perhaps, beside: besideOf(panel, facts) }];
  });
});

/** Whether the feeder of a panel brings the earth of another source; what the panel itself feeds is no source. */
function bringsEarth(panel: Equipment, facts: Asked): 'yes' | 'no' | 'unknown' {
  const { serviceBy } = facts.bonding;
  const isSource = ({ id, kind }: Equipment) =>
    panels.includes(kind) &&
    nameIn(facts, id) !== nameIn(facts, panel.id) &&
    (kind !== 'sub-panel' || serviceBy.perhaps.has(id) || serviceBy.bondsAndCords.has(id));
  const sources = new Set(facts.site.equipment.filter(isSource).map((e) => e.id));
  const feeders = facts.site.lines.filter((l) => {
    const ids = stopsOf(l);
    return l.kind === 'mains' && l.present !== 'no' && ids.includes(panel.id) && ids.some((id) => sources.has(id));
  });
  const has = feeders.map((l) => l.protectiveConductor);
  return has.includes('yes') ? 'yes' : has.includes('unknown') ? 'unknown' : 'no';
}

const stopsOf = ({ path }: Line): readonly string[] =>
  path.flatMap((s) => (s.is === 'part' || s.is === 'bond' ? (s.at.part ?? []) : []));

/** Groups and single parts that a place or a line ties to the panel, and nothing to the service or to another building. */
function looseParts(panel: Equipment, own: string, facts: Asked): ReadonlySet<string> {
  const { bonding, site } = facts;
  const index = partIndex(site);
  const name = (id: string) => nameIn(facts, id);
  const home = index.whereOf(bonding.service.part);
  const bonded = new Set([...bonding.serviceBy.bonds].map(name));
  const onService = new Set([...bonded, ...[...bonding.serviceBy.bondsAndCords].map(name)]);
  const inside = new Set(partsIn(panel.where, index).map(name));
  const others = thingsOf(index).filter((id) => isElsewhere(index.whereOf(id), panel.where, home));
  const elsewhere = new Set(others.map(name));
  const isBarred = (n: string) => onService.has(n) || (elsewhere.has(n) && !inside.has(n));
  const isHere = (n: string) => !bonded.has(n) && !(panel.where === home && onService.has(n));
  // a cord without a protective conductor brings no earth along
  const lines = site.lines.filter((l) => l.present !== 'no' && !(l.kind === 'mains' && l.protectiveConductor === 'no'));
  const pairs = lines.flatMap((l) =>
    stopsOf(l)
      .map(name)
      .map((n, i, all) => [n, all[i + 1] ?? n] as const),
  );
  const open = pairs.filter((pair) => !pair.some(isBarred));
  return reachedFrom([own, ...[...inside].filter(isHere)], neighbours(open));
}

function isElsewhere(where: string | null, here: string | null, home: string | null): boolean {
  if (where === null || where === 'outside') return false;
  return here === null ? where === home : where !== here;
}

function partsIn(where: string | null, index: PartIndex): readonly string[] {
  if (where === null || where === 'outside') return [];
  return thingsOf(index).filter((id) => index.whereOf(id) === where);
}

/** Of wires and lines a place says nothing. */
function thingsOf({ all }: PartIndex): readonly string[] {
  const things = all.filter((p) => p.section !== 'lines' && p.section !== 'conductors' && p.present !== 'no');
  return things.map((p) => p.id);
}

function besideOf({ id, where }: Equipment, { bonding, site }: Asked): readonly string[] {
  const index = partIndex(site);
  if (where === index.whereOf(bonding.service.part)) return [];
  const { bonds, bondsAndCords } = bonding.serviceBy;
  return partsIn(where, index)
    .filter((p) => p !== id && (bonds.has(p) || bondsAndCords.has(p)))
    .sort();
}
