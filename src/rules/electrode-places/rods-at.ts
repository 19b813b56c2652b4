import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import type { Answer, Conductor } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { routeLength } from '../electrode-sizes/route-length.ts';
import { printedShare } from '../electrodes/driven.ts';
import { isWhole } from '../looked-at.ts';
import { wiresOn } from '../wires-on.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'electrodes' | 'site'>;

/** How many rods stand at a tower (or at the anchor of a guy): at least those that its leads and the rings on them meet. */
export interface RodCount {
  readonly least: number;
  /** Every rod of its system; Infinity where more may be there than was typed. */
  readonly most: number;
}

/** Ours: a rod farther out on a lead of its own stands elsewhere, metres (20 ft). */
const atM = 6.096;

/** Where no rod can be driven a drilled one, a strap on the rock or a radial stands for it. */
const kinds: readonly string[] = ['rod', 'rods', 'drilled rod', 'strap on rock', 'radial'];
const grouped: readonly string[] = ['rods', 'radial'];

/** Rods long enough, each of a group counted (one of a group that nothing joins); one of unknown length may be. */
export function rodsAt(part: string, facts: Asked, leastM: number): RodCount {
  const near = new Set(reachedFrom(part, facts));
  const between = apart(facts.site);
  const isElsewhere = (id: string) => !near.has(id) && (between(part, id)?.low ?? 0) > atM;
  const rods = facts.electrodes.filter((e) => kinds.includes(e.part.kind) && !isElsewhere(e.id));
  const group = facts.bonding.groupOf.get(part) ?? null;
  const isOne = (e: ElectrodeFacts) => group !== null && e.group === group;
  const sure = rods.filter(
    (e) => near.has(e.id) && isOne(e) && isLong(e, leastM) === 'yes' && e.part.present === 'yes',
  );
  const { perhapsJoined, openEnds } = facts.bonding;
  const mayBeMore = group !== null && (perhapsJoined.has(group) || openEnds.has(group));
  const isOpen = mayBeMore || !isWhole(facts, 'electrodes') || !isWhole(facts, 'conductors');
  const all = rods.filter((e) => isLong(e, leastM) !== 'no' && (isOne(e) || e.part.present === 'unknown'));
  const most =
    isOpen || all.some((e) => grouped.includes(e.part.kind) && e.part.members === null) ? Infinity : count(all, 2);
  const lone = sure.filter((e) => e.part.joined === 'no').length;
  const joined = sure.filter((e) => e.part.joined !== 'no');
  return { least: count(joined, 1) + lone, most };
}

/** Whether a lead of the anchor of a guy lands on a rod, or on a wire in the soil with one. */
export function hasAnchorRod(guy: string, facts: Asked): Answer {
  const near = new Set(reachedFrom(guy, facts));
  if (facts.electrodes.some((e) => kinds.includes(e.part.kind) && near.has(e.id) && e.part.present === 'yes'))
    return 'yes';
  return isWhole(facts, 'electrodes') && isWhole(facts, 'conductors') ? 'no' : 'unknown';
}

function isLong({ part }: ElectrodeFacts, leastM: number) {
  const length = part.lengthM ?? routeLength(part);
  return length === null ? 'unknown' : isAtLeast(length, leastM * printedShare);
}

function count(rods: readonly ElectrodeFacts[], unknown: number): number {
  return rods.reduce((n, { part }) => n + (grouped.includes(part.kind) ? (part.members ?? unknown) : 1), 0);
}

/** A lead on its way past nothing else. */
const isFar = ({ lengthM, passes, present }: Conductor) =>
  present === 'yes' && passes.length === 0 && lengthM !== null && lengthM.low > atM;

/** Electrodes that a lead of the part lands on, and those on a wire in the soil that it lands on. */
function reachedFrom(part: string, { site, electrodes }: Asked): readonly string[] {
  const wires = wiresOn(site.conductors);
  const met = (id: string) =>
    (wires.get(id) ?? []).flatMap((c) => {
      if (c.present !== 'yes' || c.condition === 'open') return [];
      const parts = [c.from.part, c.to.part, ...c.passes.map((p) => p.at.part)];
      return parts.filter((p) => p !== null && p !== id);
    }) as readonly string[];
  const inSoil = new Set(electrodes.filter((e) => ['buried wire', 'radial'].includes(e.part.kind)).map((e) => e.id));
  const far = new Set((wires.get(part) ?? []).filter(isFar).flatMap((c) => [c.from.part, c.to.part]));
  const first = met(part).filter((id) => inSoil.has(id) || !far.has(id));
  return [...first, ...first.filter((id) => inSoil.has(id)).flatMap(met)];
}
