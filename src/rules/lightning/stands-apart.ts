import type { Facts } from '../../facts/facts.ts';
import type { Answer, Support } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { iecSeparation } from './iec-separation.ts';
import { type LightningSystem, lightningSystem } from './lightning-system.ts';
import { protectedZone, topOf } from './protected-zone.ts';
import { alongOf, countOf, isJoinedAbove } from './side-flash.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'conductors' | 'site'>;

/** How a support stands to the lightning protection of its building, by IEC 62305-3 5.2 and 6.3 (from memory). */
export interface StandsApart {
  /** It and all its antennas lie under the air terminals. */
  readonly zone: Answer;
  /** It keeps the separation distance from each terminal and each down conductor. */
  readonly separation: Answer;
}

export function standsApart(support: Support, system: LightningSystem, facts: Asked): StandsApart {
  return { zone: zoneOf(support, facts), separation: separationOf(support, system, facts) };
}

/** Supports that lie under the terminals and are nowhere known to be too near: whoever designed it may want them so. */
export function mayStandApart(facts: Asked): ReadonlySet<string> {
  const system = lightningSystem(facts);
  if (system === null) return new Set();
  const found = facts.site.supports.filter((s) => {
    if (s.kind === 'air terminal' || zoneOf(s, facts) !== 'yes') return false;
    return separationOf(s, system, facts) !== 'no';
  });
  return new Set(found.map((s) => s.id));
}

function zoneOf(support: Support, facts: Asked): Answer {
  const of = protectedZone(facts);
  const carried = facts.site.antennas.filter((a) => a.on?.part === support.id && a.present !== 'no');
  const tops = carried.map((a) => ({ id: a.id, topM: topOf(a) ?? support.heightM }));
  const zones = [{ id: support.id, topM: support.heightM }, ...tops].map(of);
  if (zones.includes('outside')) return 'no';
  return zones.every((z) => z === 'under') ? 'yes' : 'unknown';
}

function separationOf(support: Support, { down, terminals, groups }: LightningSystem, facts: Asked): Answer {
  if (isJoinedAbove(support, facts)) return groups.has(facts.bonding.groupOf.get(support.id) ?? '') ? 'no' : 'unknown';
  if (down.length === 0) return 'unknown';
  const limitM = iecSeparation(facts.header);
  const between = apart(facts.site);
  const count = countOf(
    down.slice(1).map(() => null),
    Infinity,
    facts,
  );
  // from a terminal the way to the soil is the terminal itself and, at most, the longest way down
  const longestM = Math.max(...down.map((c) => c.lengthM?.high ?? Infinity));
  const footM = Math.max(0, support.position?.[2] ?? 0);
  const answers = [
    ...down.map((c) => keeps(between(support.id, c.id), limitM(alongOf(support, c), count))),
    ...terminals.map((t) => {
      const alongM = { low: footM, high: longestM + (t.heightM?.high ?? Infinity) };
      return keeps(between(support.id, t.id), limitM(alongM, count));
    }),
  ];
  if (answers.includes('no')) return 'no';
  return answers.every((a) => a === 'yes') ? 'yes' : 'unknown';
}

function keeps(d: Interval | null, limitM: Interval): Answer {
  if (d === null) return 'unknown';
  if (d.high < limitM.low) return 'no';
  return d.low >= limitM.high ? 'yes' : 'unknown';
}
