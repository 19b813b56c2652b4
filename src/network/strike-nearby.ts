import type { StraightPiece } from '../surge/straight-piece.ts';
import type { Wave } from '../surge/wave.ts';
import { channelM, channelRadiusM, type StrikeSite, strikeOf } from './strike-of.ts';
import type { StrikePair } from './strike-pairs.ts';
import type { StrikePoint } from './strike-point.ts';
import { strikeBetween } from './strike-result.ts';

/** Sides from which a strike near by may come, and their unit vectors east and north. */
export const nearbySides = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;
export type NearbySide = (typeof nearbySides)[number];

/** A strike into the ground so far from the middle of the site; side null: the worst of eight. */
export interface NearbyAsk {
  readonly distanceM: number;
  readonly side: NearbySide | null;
}

/** Where a site's metal is in plan: its middle, and how far it reaches from there; null: nothing has a place. */
export function middleOf({ network: { pieces } }: Pick<StrikeSite, 'network'>) {
  const ends = pieces.flatMap(({ from, to }) => [from, to]);
  if (ends.length === 0) return null;
  const [east, north] = [0, 1].map((axis) => {
    const all = ends.map((end) => end[axis]!);
    return (Math.min(...all) + Math.max(...all)) / 2;
  }) as [number, number];
  const reachM = Math.max(...ends.map((end) => Math.hypot(end[0] - east, end[1] - north)));
  return { east, north, reachM };
}

/** Upright from the ground, beside the site. */
function nearbyChannel(east: number, north: number, { distanceM }: NearbyAsk, side: NearbySide): StraightPiece {
  const angle = (nearbySides.indexOf(side) * Math.PI) / 4;
  const [x, y] = [east + distanceM * Math.sin(angle), north + distanceM * Math.cos(angle)];
  return { from: [x, y, channelM], to: [x, y, 0], radiusM: channelRadiusM };
}

/**
 * The point of a strike near by: from the side that is asked for, else from that which makes the largest figure (`worstOf`, of
 * a point). `text`: the distance as it was typed. null: nothing of the site has a place, or it would stand within the site.
 */
export function nearbyPoint(
  site: StrikeSite,
  node: string,
  ask: NearbyAsk & { readonly text: string },
  worstOf: (point: StrikePoint) => number,
): StrikePoint | null {
  const middle = middleOf(site);
  if (middle === null || ask.distanceM <= middle.reachM) return null;
  const sides = ask.side === null ? nearbySides : [ask.side];
  const points = sides.map((side): StrikePoint => {
    return { node, text: `${ask.text} ${side}`, channel: nearbyChannel(middle.east, middle.north, ask, side) };
  });
  const sized = points.map((point) => ({ point, size: points.length === 1 ? 0 : worstOf(point) }));
  return sized.reduce((most, one) => (one.size > most.size ? one : most)).point;
}

/** Largest difference that one makes between two things that a line joins or somebody reaches; 0: none. */
export function largestDifference(site: StrikeSite, pairs: readonly StrikePair[], wave: Wave) {
  return (point: StrikePoint): number => {
    const strike = strikeOf(site, point, wave);
    if (!strike.ok) return 0;
    const volts = pairs.map((pair) => strikeBetween(pair, strike.network, strike.run, strike.places)?.peak.value ?? 0);
    return Math.max(0, ...volts.map(Math.abs));
  };
}
