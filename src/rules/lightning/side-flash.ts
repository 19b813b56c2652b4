import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Metalwork } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';
import { lightningSystem } from './lightning-system.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'conductors' | 'site'>;

/** Not the building's metal, or not to be bonded. */
const leftOut: readonly string[] = ['overhead power line', 'property line', 'service mast', 'electric fence'];

/**
 * Each metal body beside a down conductor: bonded to it, or farther than the distance asked. `asked` works that distance out
 * from the length of conductor between the place and the nearest bond, metres, and the number of down conductors.
 */
export function bodiesBeside(
  facts: Asked,
  asked: (alongM: Interval, downConductors: number) => Interval | null,
): readonly Verdict[] {
  const system = lightningSystem(facts);
  if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
  const bodies = facts.site.metalwork.filter((m) => m.present !== 'no' && !leftOut.includes(m.kind));
  if (bodies.length === 0 || system.down.length === 0) return nothingThere(facts, 'metalwork');
  const between = apart(facts.site);
  const pairs = bodies.flatMap((body) => system.down.map((down) => ({ body, down, d: between(body.id, down.id) })));
  const verdicts = pairs.flatMap(({ body, down, d }) => {
    if (d === null) return [];
    return [ofPair(body, down, d, asked(alongOf(body, down), system.down.length), facts)];
  });
  return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'no distance' } }];
}

/** From the place to the soil: at least its height, where that is typed; at most the whole conductor. */
function alongOf(body: Metalwork, { lengthM }: ConductorFacts): Interval {
  const heightM = Math.max(0, body.position?.[2] ?? 0);
  return { low: heightM, high: Math.max(heightM, lengthM?.high ?? Infinity) };
}

function ofPair(
  body: Metalwork,
  down: ConductorFacts,
  distanceM: Interval,
  limitM: Interval | null,
  { bonding }: Asked,
): Verdict {
  const at = [body.id, down.id];
  const groups = down.ends.map((id) => bonding.groupOf.get(id ?? ''));
  const group = bonding.groupOf.get(body.id);
  if (group !== undefined && groups.includes(group)) return { is: 'met', at, because: { key: 'bonded' } };
  if (limitM !== null && distanceM.low >= limitM.high) return { is: 'met', at, because: { key: 'far' } };
  const isOpen = body.bonded === 'unknown' || bonding.openEnds.has(group ?? '');
  if (limitM !== null && distanceM.high < limitM.low && !isOpen) {
    const measured = { key: 'distanceLengthM', value: distanceM, limit: limitM.low, sense: 'least' } as const;
    return { is: 'not met', at, because: { key: 'near' }, measured, under: `metalwork-bonded:${body.id}` };
  }
  return { is: 'cannot tell', at, because: { key: 'height unknown' }, settle: { key: 'tape' } };
}
