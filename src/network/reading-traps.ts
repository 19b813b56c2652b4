import type { BondingRun } from '../bonding/bonding-of.ts';
import { siteIndex } from '../bonding/site-index.ts';
import { type ClampTrap, trapsOfClamp } from '../electrodes/clamp-loop.ts';
import { probeShares, probesAgree } from '../electrodes/fall-of-potential.ts';
import { type SlopeAnswer, slopeProbe } from '../electrodes/slope-method.ts';
import { positionsOf } from '../site/positions-of.ts';
import type { Electrode, Reading } from '../site/site.ts';
import { middle } from '../units/interval.ts';

export type ReadingTrapKey = ClampTrap | Exclude<SlopeAnswer, { readonly ok: true }>['reason'] | 'probes-disagree';

/** Why a reading is not the resistance to earth that it looks like. */
export interface ReadingTrap {
  readonly reading: string;
  /** What was read. */
  readonly at: string;
  readonly trap: ReadingTrapKey;
}

/** Of every clamp-on reading and of every fall of potential whose probes stood where a method asks for them; in order of the file. */
export function readingTraps(run: BondingRun): readonly ReadingTrap[] {
  return run.site.readings.flatMap((reading) => {
    const at = reading.on?.part ?? null;
    if (at === null) return [];
    const traps = reading.kind === 'stakeless' ? trapsOfLoop(reading, at, run) : trapsOfProbes(reading);
    return traps.map((trap) => ({ reading: reading.id, at, trap }));
  });
}

/**
 * Electrodes of the group that hangs on the clamped lead. With the service in it the neutral brings electrodes of others
 * into the loop, so that nobody knows how many there are.
 */
function trapsOfLoop({ reads }: Reading, at: string, run: BondingRun): readonly ClampTrap[] {
  const reach = new Set([at, ...landingsOn(at, run)]);
  const group = run.bonding.groups.find((g) => g.parts.some((p) => reach.has(p)));
  const readsOhm = reads === null || reads.overRange ? null : middle(reads.ohm);
  const all = run.site.electrodes.filter((e) => group?.electrodes.includes(e.id) === true);
  const clamped = all.find((e) => reach.has(e.id)) ?? null;
  const isAlone = group !== undefined && group.hasService === false;
  // many: nothing is said of their number
  const others = isAlone && clamped !== null ? countOf(all) - 1 : Number.POSITIVE_INFINITY;
  return trapsOfClamp(readsOhm, others, clamped === null ? null : nearestOf(clamped, all, run));
}

function landingsOn(id: string, { site }: BondingRun): readonly string[] {
  const wire = site.conductors.find((c) => c.id === id);
  return wire === undefined ? [] : [wire.from, wire.to].flatMap((p) => p.part ?? []);
}

/** Rods of a group counted singly. */
function countOf(electrodes: readonly Electrode[]): number {
  return electrodes.reduce((sum, e) => sum + (e.kind === 'rods' ? (e.members ?? 2) : 1), 0);
}

/** Distance to the nearest other electrode over the length of the longer of both; null: not known. */
function nearestOf(clamped: Electrode, all: readonly Electrode[], { site }: BondingRun): number | null {
  const places = positionsOf(site, (id) => siteIndex(site).parts.get(id));
  const own = places.of(clamped.id);
  const shares = all.flatMap((e) => {
    const place = e === clamped ? null : places.of(e.id);
    const lengths = [e, clamped].flatMap(({ lengthM }) => (lengthM === null ? [] : (middle(lengthM) ?? [])));
    if (own === null || place === null || lengths.length < 2) return [];
    return [Math.hypot(place[0] - own[0], place[1] - own[1]) / Math.max(...lengths)];
  });
  return shares.length === 0 ? null : Math.min(...shares);
}

/** A probe within so much of where it should stand, as a share of the way to the current probe, stands there. */
const placedWithin = 0.021;
const slopeShares = [0.2, 0.4, 0.6] as const;

function trapsOfProbes(reading: Reading): readonly ReadingTrapKey[] {
  if (reading.kind !== 'fall of potential') return [];
  const slope = readAt(reading, slopeShares);
  const answer = slope === null ? null : slopeProbe(...slope);
  const level = readAt(reading, probeShares);
  return [
    ...(answer === null || answer.ok ? [] : [answer.reason]),
    ...(level === null || probesAgree(level).agrees ? [] : (['probes-disagree'] as const)),
  ];
}

/** Readings with the probe at three shares of the way; null where one of them is not there. */
function readAt(
  { currentProbeM, potentialProbeM, resistance }: Reading,
  shares: readonly [number, number, number],
): readonly [number, number, number] | null {
  const wayM = currentProbeM === null ? null : middle(currentProbeM);
  if (wayM === null) return null;
  const found = shares.map((share) => {
    const at = potentialProbeM.findIndex((probe) => Math.abs((middle(probe) ?? 0) / wayM - share) < placedWithin);
    const read = resistance[at];
    const ohm = read === undefined || read.overRange ? null : middle(read.ohm);
    return ohm !== null && ohm > 0 ? ohm : null;
  });
  return found.every((ohm) => ohm !== null) ? (found as [number, number, number]) : null;
}
