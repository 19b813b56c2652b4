import type { Facts } from '../../facts/facts.ts';
import type { Answer, Part } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { isPool } from '../is-pool.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'masts' | 'site'>;

/** Not fixed metal that a bather may touch. */
const leftOut: readonly string[] = ['overhead power line', 'property line', 'electric fence'];

/**
 * Each fixed metal part beside a pool: farther than `withinM`, all of it higher than `reachM`, or in one group with the pool
 * by metal that is thick enough.
 */
export function metalAtPools(
  facts: Asked,
  withinM: number,
  byThick: (part: Part, pool: string) => Answer,
  reachM = Infinity,
): readonly Verdict[] {
  const { site } = facts;
  const pools = site.metalwork.filter((m) => isPool(m.kind) && m.present !== 'no');
  if (pools.length === 0) return nothingThere(facts, 'metalwork');
  const metal = fixedMetal(facts).filter((part) => !isAllAbove(part, reachM));
  if (metal.length === 0) return [{ is: 'not applicable', because: { key: 'no metal' } }];
  const between = apart(site);
  return pools.flatMap((pool) =>
    metal.map((part) => ofPart(facts, part, pool, between(part.id, pool.id), withinM, byThick(part, pool.id))),
  );
}

function fixedMetal({ site, masts }: Asked): readonly Part[] {
  const supports = masts.filter((m) => m.metal !== 'no').map((m) => m.part);
  const others = site.metalwork.filter((m) => !leftOut.includes(m.kind) && !isPool(m.kind));
  return [...supports, ...others].filter((p) => p.present !== 'no');
}

/** Heights are above the soil, which the water of a pool in it does not exceed; a support comes down to it. */
function isAllAbove(part: Part, reachM: number): boolean {
  if (part.section !== 'metalwork') return false;
  const points = part.route === null ? [part.position] : part.route.map((p) => p.position);
  return points.length > 0 && points.every((p) => p !== null && p[2] > reachM);
}

function ofPart(
  facts: Asked,
  part: Part,
  pool: Part,
  distanceM: Interval | null,
  withinM: number,
  thick: Answer,
): Verdict {
  const at = [part.id, pool.id];
  const { groupOf, openEnds } = facts.bonding;
  const isOne = groupOf.get(part.id) !== undefined && groupOf.get(part.id) === groupOf.get(pool.id);
  const measured =
    distanceM === null
      ? undefined
      : ({ key: 'distanceLengthM', value: distanceM, limit: withinM, sense: 'least' } as const);
  if (distanceM !== null && distanceM.low >= withinM && distanceM.high > withinM)
    return { is: 'met', at, because: { key: 'beyond' }, measured: measured! };
  const near = distanceM !== null && distanceM.high <= withinM;
  if (isOne && thick === 'no' && near) return { is: 'not met', at, because: { key: 'thin' } };
  if (isOne && thick === 'unknown' && near)
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  if (isOne && thick === 'yes') return { is: 'met', at, because: { key: 'bonded' } };
  if (!near) return { is: 'cannot tell', at, because: { key: 'distance unknown' }, settle: { key: 'tape' } };
  // one missing bond: where both are said to be in reach of one person, that finding stands for it
  const under = `shelters-within-reach-bonded:${[...at].sort().join('+')}`;
  const isOpen = [part, pool].some((p) => p.bonded === 'unknown' || openEnds.has(groupOf.get(p.id) ?? ''));
  if (isOpen || !isWhole(facts, 'conductors'))
    return { is: 'cannot tell', at, because: { key: 'bond unknown' }, settle: { key: 'look' } };
  return { is: 'not met', at, because: { key: 'apart' }, measured: measured!, under };
}
