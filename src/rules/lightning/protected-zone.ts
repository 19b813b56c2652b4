import type { Facts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import { positionsOf } from '../../site/positions-of.ts';
import type { Antenna, Site, Support } from '../../site/site.ts';
import { type Interval, isExact } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';

/** Radius of the rolling sphere, metres: 46 m in the United States, by class I to IV elsewhere. */
export const sphereM = { us: 46, 1: 20, 2: 30, 3: 45, 4: 60 } as const;
/** A terminal stands this much above what it protects, metres (10 in). */
const aboveM = 0.25;

/** What stands out: a part of the plan, and the height of its top above the ground. */
export interface Standing {
  readonly id: string;
  readonly topM: Interval | null;
}

export type Zone = 'under' | 'outside' | 'several' | 'not typed';

export const topOf = (antenna: Antenna) => antenna.heightM ?? antenna.on?.atM ?? null;

/** Whether a rolling sphere that rests on the air terminals of the site meets what stands there. */
export function protectedZone({ header, site }: Pick<Facts, 'header' | 'site'>): (one: Standing) => Zone {
  const radiusM = radiusOf(header);
  const terminals = site.supports.filter((s) => s.kind === 'air terminal' && s.present !== 'no');
  const positions = positionsOf(site, partIndex(site).get);
  return (one) => {
    const answers = terminals.map((t) => isUnder(one, t, radiusM, positions.of));
    if (answers.includes('yes')) return 'under';
    if (radiusM === null || terminals.length === 0 || answers.includes('unknown')) return 'not typed';
    return mayBeHeldUp(one, terminals, site) ? 'several' : 'outside';
  };
}

/** The sphere may rest on two terminals, or on one and a roof, which lifts it. */
function mayBeHeldUp(one: Standing, terminals: readonly Support[], site: Site): boolean {
  const higher = terminals.filter((t) => isAbove(t, one) !== 'no').length;
  return higher > 0 && higher + site.buildings.length > 1;
}

function radiusOf(header: Facts['header']): number | null {
  const { lightningClass } = claimsOf(header);
  if (header.region !== 'iec' && header.region !== 'uk') return sphereM.us;
  return lightningClass === null ? null : sphereM[lightningClass];
}

/**
 * Under a sphere that rolls over the ground and the terminal: horizontal distance at most sqrt(H(2R - H)) - sqrt(h(2R - h)),
 * H the height of the terminal (at most R counts), h that of what stands there.
 */
function isUnder(
  one: Standing,
  terminal: Support,
  radiusM: number | null,
  positionOf: ReturnType<typeof positionsOf>['of'],
): 'yes' | 'no' | 'unknown' {
  const [a, t, topM] = [positionOf(one.id), positionOf(terminal.id), terminal.heightM];
  const h = one.topM;
  if (radiusM === null || a === null || t === null || topM === null || h === null) return 'unknown';
  if (!isExact(topM) || !isExact(h)) return 'unknown';
  if (isAbove(terminal, one) === 'no') return 'no';
  const reach = (heightM: number) => Math.sqrt(Math.min(heightM, radiusM) * (2 * radiusM - Math.min(heightM, radiusM)));
  return Math.hypot(a[0] - t[0], a[1] - t[1]) <= reach(topM.low) - reach(h.low) ? 'yes' : 'no';
}

/** Whether a terminal stands high enough above it at all. */
function isAbove({ heightM }: Support, { topM }: Standing): 'yes' | 'no' | 'unknown' {
  if (heightM === null || topM === null) return 'unknown';
  return topM.low > heightM.low - aboveM ? 'no' : 'yes';
}
