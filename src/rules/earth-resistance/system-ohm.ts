import type { Group } from '../../bonding/bonding.ts';
import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import type { StatedOhm } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';

export interface SystemOhm {
  readonly ohm: Interval;
  /** at most: what the best electrode of several has alone, in the worst soil; more metal only lowers that. */
  readonly how: 'measured' | 'over range' | 'computed' | 'at most';
  readonly electrodes: readonly string[];
}

type Asked = Pick<Facts, 'site' | 'bonding' | 'electrodes' | 'earth'>;

/**
 * Resistance to earth of the system of the service, or of the only system there is: as measured with all of it joined,
 * else from the soil that was typed. null: nobody measured, and no soil was typed. Only the last asks for the solve, and not
 * where one electrode of several has no more than `enoughOhm` by itself.
 */
export function systemOhm(facts: Asked, enoughOhm: number): SystemOhm | null {
  const withElectrodes = facts.bonding.groups.filter((g) => g.electrodes.length > 0);
  const group =
    withElectrodes.find((g) => g.hasService === true) ?? (withElectrodes.length === 1 ? withElectrodes[0]! : null);
  if (group === null) return null;
  const { electrodes } = group;
  const read = measuredOf(group, facts);
  if (read !== null) return { ohm: read.ohm, how: read.overRange ? 'over range' : 'measured', electrodes };
  if (facts.site.soil === null) return null;
  const best = electrodes.length > 1 ? bestAloneOhm(group, facts, enoughOhm) : Number.POSITIVE_INFINITY;
  if (best <= enoughOhm) return { ohm: { low: best, high: best }, how: 'at most', electrodes };
  const solved = facts.earth.groups.find((g) => g.id === group.id)?.resistanceOhm ?? null;
  return solved === null ? null : { ohm: { low: solved.low, high: solved.high }, how: 'computed', electrodes };
}

/** Readings at a part of the system that is no single electrode, a resistance stated as read bonded, or the lone electrode's own. */
function measuredOf(group: Group, { site, electrodes }: Asked): StatedOhm | null {
  const own = electrodes.filter((e) => e.group === group.id);
  const single = new Set(own.map((e) => e.id));
  const atSystem = site.readings.filter((r) => {
    const part = r.on?.part ?? null;
    return r.kind === 'fall of potential' && part !== null && group.parts.includes(part) && !single.has(part);
  });
  const read = atSystem.flatMap((r) => r.resistance);
  const bonded = own.flatMap((e) =>
    e.part.measured === 'bonded' && e.part.resistance !== null ? [e.part.resistance] : [],
  );
  return spread([...read, ...bonded]) ?? ofLone(own);
}

/** Kinds of much metal, which are the likeliest to be enough. */
const large: readonly string[] = ['buried wire', 'radial', 'concrete-encased', 'well casing'];

/** The first that is enough, else the least; Infinity: none is known to be there, or of none is anything known. */
function bestAloneOhm(group: Group, { electrodes }: Asked, enoughOhm: number): number {
  const own = electrodes.filter((e) => e.group === group.id && e.part.present !== 'unknown');
  const likeliestFirst = [true, false].flatMap((isLarge) => own.filter((e) => large.includes(e.part.kind) === isLarge));
  let best = Number.POSITIVE_INFINITY;
  for (const each of likeliestFirst) {
    best = Math.min(best, each.aloneOhm?.high ?? best);
    if (best <= enoughOhm) return best;
  }
  return best;
}

function ofLone(own: readonly ElectrodeFacts[]): StatedOhm | null {
  return own.length === 1 && own[0]!.electrodesInGroup === 1 ? own[0]!.measuredOhm : null;
}

function spread(all: readonly StatedOhm[]): StatedOhm | null {
  if (all.length === 0) return null;
  const ohm = { low: Math.min(...all.map((r) => r.ohm.low)), high: Math.max(...all.map((r) => r.ohm.high)) };
  return { ohm, overRange: all.some((r) => r.overRange) };
}
