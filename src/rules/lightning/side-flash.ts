import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Metalwork, PartBase } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';
import { lightningSystem } from './lightning-system.ts';

export type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'conductors' | 'site'>;

/** Not the building's metal, or not to be bonded. */
const leftOut: readonly string[] = ['overhead power line', 'property line', 'service mast', 'electric fence'];

/** How the distance asked is worked out. */
export interface Asking {
  /** Down conductors farther from the metal than this are not counted, metres. */
  readonly countedM: number;
  /** From the length of conductor between the place and the nearest bond, metres, and the least and most that are counted. */
  readonly distanceM: (alongM: Interval, downConductors: Interval) => Interval;
}

/** Each metal body beside a down conductor: bonded to it, or farther than the distance asked. */
export function bodiesBeside(facts: Asked, { countedM, distanceM }: Asking): readonly Verdict[] {
  const system = lightningSystem(facts);
  if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
  const bodies = facts.site.metalwork.filter((m) => m.present !== 'no' && !leftOut.includes(m.kind));
  if (bodies.length === 0 || system.down.length === 0) return nothingThere(facts, 'metalwork');
  const between = apart(facts.site);
  const pairs = bodies.flatMap((body) => system.down.map((down) => ({ body, down, d: between(body.id, down.id) })));
  const verdicts = pairs.flatMap(({ body, down, d }) => {
    if (d === null) return [];
    const others = system.down.filter((c) => c !== down).map((c) => between(body.id, c.id));
    return [ofPair(body, down, d, distanceM(alongOf(body, down), countOf(others, countedM, facts)), facts)];
  });
  return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'no distance' } }];
}

/** The conductor itself, and the others that are, or may be, near enough to share with it. */
export function countOf(
  others: readonly (Interval | null)[],
  countedM: number,
  facts: Pick<Asked, 'header' | 'sections'>,
): Interval {
  const sure = others.filter((d) => countedM === Infinity || (d !== null && d.high <= countedM)).length;
  const may = others.filter((d) => d === null || d.low <= countedM).length;
  return { low: 1 + sure, high: isWhole(facts, 'conductors') ? 1 + may : Infinity };
}

/** From the place to the soil: at least its height, where that is typed; at most the whole conductor. */
export function alongOf(body: Pick<PartBase, 'position'>, { lengthM }: ConductorFacts): Interval {
  const heightM = Math.max(0, body.position?.[2] ?? 0);
  return { low: heightM, high: Math.max(heightM, lengthM?.high ?? Infinity) };
}

function ofPair(body: Metalwork, down: ConductorFacts, distanceM: Interval, limitM: Interval, facts: Asked): Verdict {
  const { bonding } = facts;
  const at = [body.id, down.id];
  const groups = down.ends.map((id) => bonding.groupOf.get(id ?? ''));
  const group = bonding.groupOf.get(body.id);
  const isNear = distanceM.high < limitM.low;
  if (group !== undefined && groups.includes(group)) {
    if (!isNear || isJoinedAbove(body, facts)) return { is: 'met', at, because: { key: 'bonded' } };
    return { is: 'cannot tell', at, because: { key: 'bonded lower' }, settle: { key: 'look up' } };
  }
  if (distanceM.low >= limitM.high) return { is: 'met', at, because: { key: 'far' } };
  const isSpokenOf = body.bonded !== null || facts.conductors.some((c) => [...c.ends, ...c.passes].includes(body.id));
  const nobodySaid = body.bonded !== 'no' && (!isSpokenOf || !isWhole(facts, 'conductors'));
  const isOpen = body.bonded === 'unknown' || nobodySaid || bonding.openEnds.has(group ?? '');
  if (isNear && !isOpen) {
    const measured = { key: 'distanceLengthM', value: distanceM, limit: limitM.low, sense: 'least' } as const;
    return { is: 'not met', at, because: { key: 'near' }, measured, under: `metalwork-bonded:${body.id}` };
  }
  if (isNear) return { is: 'cannot tell', at, because: { key: 'bond unknown' }, settle: { key: 'look for bond' } };
  return { is: 'cannot tell', at, because: { key: 'height unknown' }, settle: { key: 'tape' } };
}

/** A conductor on it leads elsewhere than to what is at the foot of a building: an electrode, a bar, a panel. */
export function isJoinedAbove(
  body: Pick<PartBase, 'id'>,
  { conductors, site }: Pick<Asked, 'conductors' | 'site'>,
): boolean {
  const atFoot = new Set([...site.electrodes, ...site.bars, ...site.equipment].map((p) => p.id));
  const points = conductors.map((c) => [...c.ends, ...c.passes]).filter((ids) => ids.includes(body.id));
  return points.some((ids) => ids.some((id) => id !== body.id && (id === null || !atFoot.has(id))));
}
