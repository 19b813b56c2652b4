import type { BondingRun } from '../bonding/bonding-of.ts';
import type { PointRef, Site } from '../site/site.ts';
import type { Wave } from '../surge/wave.ts';
import type { Ground } from './ground.ts';
import { lineOf, strikeEntry } from './strike-entry.ts';
import { largestDifference, type NearbyAsk, nearbyPoint } from './strike-nearby.ts';
import { type RefusedStrike, type StrikeSite, strikeSite } from './strike-of.ts';
import { remoteEarth, strikePairs } from './strike-pairs.ts';
import { defaultStrikePoint, type StrikePoint } from './strike-point.ts';
import type { StrikeWaveName } from './strike-wave.ts';

/** Where a stroke is asked for; null: at the usual point. */
export interface PointAsk {
  readonly at: PointRef | null;
  readonly nearby?: (NearbyAsk & { readonly text: string }) | null;
}

/** Why there is no such point. */
export interface NoStrikePoint {
  readonly reason: RefusedStrike['reason'] | 'nothing to strike' | 'no metal' | 'not near';
  readonly parts: readonly string[];
}

/** Where the stroke enters, or stands beside the site. */
export function strikePoint(
  bonded: BondingRun,
  ground: Ground,
  { at, nearby }: PointAsk,
  { wave, named }: { readonly wave: Wave } & Pick<StrikeSite, 'named'>,
): StrikePoint | NoStrikePoint {
  if (nearby != null) return besideSite(bonded, ground, nearby, { wave, named });
  if (at === null) return defaultStrikePoint(bonded.site, bonded) ?? { reason: 'nothing to strike', parts: [] };
  return strikeEntry(bonded, at) ?? { reason: 'no metal', parts: [at.text] };
}

function besideSite(
  bonded: BondingRun,
  ground: Ground,
  nearby: NonNullable<PointAsk['nearby']>,
  { wave, named }: { readonly wave: Wave } & Pick<StrikeSite, 'named'>,
): StrikePoint | NoStrikePoint {
  const site = strikeSite(bonded, ground, 'likely', named);
  if (!site.ok) return site;
  const node = site.network.nodes.find((_, i) => site.network.at[i]! >= 0);
  const partOf = (id: string) => bonded.metal.index.parts.get(id);
  const pairs = strikePairs(bonded.site, partOf).filter(({ b }) => b !== remoteEarth);
  const worstOf = largestDifference(site, pairs, wave);
  const point = node === undefined ? null : nearbyPoint(site, node, nearby, worstOf);
  return point ?? { reason: 'not near', parts: [] };
}

/** A surge that comes in along a line from outside has the wave of a test generator where no other is asked for. */
export function usualWave({ lines }: Site, at: PointRef | null): StrikeWaveName | null {
  const line = at === null ? null : lineOf(lines, at);
  return line?.path.some((stop) => stop.is === 'street') === true ? '8/20' : null;
}
