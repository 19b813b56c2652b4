import { conductorLength } from '../bonding/span-figures.ts';
import { tappedLengths, wireTaps } from '../bonding/wire-taps.ts';
import type { Run, SoilPoint } from '../electrodes/body.ts';
import { bodyTroubles } from '../electrodes/body-troubles.ts';
import type { EnclosingSoils } from '../electrodes/solved-resistance.ts';
import type { Conductor, Part, PointRef, Site } from '../site/site.ts';
import { exact, type Interval, middle } from '../units/interval.ts';
import type { Certain } from './certain.ts';
import { usualDepthM, wireRadius } from './electrode-shape.ts';
import type { LeakingLine } from './leaking-line.ts';
import { lineLengthM, linePieces, pieceCount, stretchesAt } from './line-pieces.ts';
import { rangeShare } from './range-share.ts';
import { nearestPair, routeWay, siteWays, type Way } from './site-ways.ts';

/** A bare conductor in the soil: it leaks current along its way, though nobody counts it among the electrodes. */
export interface LeakingConductor {
  readonly id: string;
  /** One of which nobody says that it is bare is taken as bare, but not relied on; one that may not be there is not even that. */
  readonly certain: Certain;
  /** Parts on which it lands. */
  readonly meets: readonly string[];
  readonly lengthM: Interval | null;
  readonly radiusM: Interval;
  readonly depthM: Interval;
  /** Span by span, from clamp to clamp; null: its place is not known. */
  readonly spans: readonly LeakingLine[] | null;
}

/** Conductors that are or may be there, in soil, not insulated and of known thickness, by id. */
export function leakingConductors(
  site: Site,
  partOf: (id: string) => Part | undefined,
  soils: EnclosingSoils | null,
): readonly LeakingConductor[] {
  const wayOf = siteWays(site, partOf);
  const taps = wireTaps(site);
  return site.conductors
    .filter((c) => c.present !== 'no' && c.condition !== 'open' && c.wire !== null && c.wire.insulated !== 'yes')
    .flatMap((c) => {
      const depthM = depthOf(c);
      const radiusM = wireRadius(c.wire);
      if (depthM === null || radiusM === null) return [];
      const meets = landingsOf(c).flatMap(({ part }) => part ?? []);
      const own = { id: c.id, certain: certainOf(c), meets, lengthM: conductorLength(c), radiusM, depthM };
      const runs = runsOfSpans(c, own, taps.get(c.id) ?? [], wayOf);
      const spans =
        runs === null ? null : runs.flatMap((of, span) => (of.length === 0 ? [] : [lineOf(of, own, span, soils)]));
      return [{ ...own, spans: spans === null || spans.length === 0 ? null : spans }];
    })
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

function landingsOf({ from, passes, to }: Conductor): readonly PointRef[] {
  return [from, ...passes.map((p) => p.at), to];
}

/** What lies in a pipe may be out of touch with the soil. */
function certainOf({ present, wire, enclosure, runs }: Conductor): Certain {
  if (present === 'unknown' || enclosure !== null || runs === 'in conduit') return 'perhaps';
  return wire?.insulated === 'no' ? 'there' : 'likely';
}

/** null: not in soil. */
function depthOf(c: Conductor): Interval | null {
  if (c.buriedM === 'yes') return usualDepthM;
  if (c.buriedM === null || c.buriedM === 'no' || !(c.buriedM.high > 0)) return null;
  return Number.isFinite(c.buriedM.high) ? c.buriedM : exact(c.buriedM.low);
}

type Own = Omit<LeakingConductor, 'spans'>;

/** Runs of each span in the order of its ties; [] where a span has no length; null: the place of one is not known. */
function runsOfSpans(
  c: Conductor,
  own: Own,
  taps: readonly PointRef[],
  wayOf: (point: PointRef) => Way,
): readonly (readonly Run[])[] | null {
  if (middle(own.radiusM) === null) return null;
  const route = c.passes.length === 0 ? routeWay(c.route) : [];
  const ways = landingsOf(c).map(wayOf);
  if (route.length === 0 && ways.some((way) => way.length === 0)) return null;
  const spans = route.length > 0 ? [route] : ways.slice(1).map((to, i) => nearestPair(ways[i]!, to));
  const runs = spans.map((way) => runsOf(way, own));
  if (runs.some((of) => of.length === 0)) return null;
  if (taps.length === 0 && c.splices.length === 0) return runs;
  const shares = c.passes.length > 0 ? null : partedShares(c, taps);
  return shares === null ? null : stretchesAt(runs[0]!, sharesAlong(shares, lineLengthM(runs[0]!)));
}

/** Lengths of the spans that taps or splices make, in any measure; null: nobody knows where they are. */
function partedShares(c: Conductor, taps: readonly PointRef[]): readonly number[] | null {
  // as the resistances of spans are shared out
  if (taps.length === 0) return Array.from({ length: c.splices.length + 1 }, () => 1);
  return tappedLengths(c, taps)?.map(({ low }) => low) ?? null;
}

function sharesAlong(shares: readonly number[], lengthM: number): readonly number[] {
  const all = shares.reduce((sum, share) => sum + share, 0);
  let done = 0;
  return shares.slice(0, -1).map((share) => {
    done += share;
    return (done / all) * lengthM;
  });
}

function lineOf(runs: readonly Run[], own: Own, span: number, soils: EnclosingSoils | null): LeakingLine {
  const lengthM = lineLengthM(runs);
  const { id, certain, radiusM, depthM } = own;
  return {
    part: id,
    span,
    certain,
    lengthM,
    isClosed: false,
    pieces: linePieces([runs], pieceCount(lengthM)),
    ohmPerM: null,
    share: rangeShare({ kind: 'wire', lengthM: exact(lengthM), radiusM, depthM }, soils, null),
    landingM: new Map(),
  };
}

/** [] where it is too short to be a body, or longer than anything of a station. */
function runsOf(way: Way, { depthM, radiusM }: Own): readonly Run[] {
  const thickM = middle(radiusM)!;
  const points = way.map(([east, north]): SoilPoint => [east, north, Math.max(middle(depthM)!, thickM)]);
  const runs = points.slice(1).flatMap((to, i): readonly Run[] => {
    const from = points[i]!;
    const isStub = Math.hypot(to[0] - from[0], to[1] - from[1]) < 4 * thickM;
    return isStub ? [] : [{ from, to, radiusM: thickM, sheath: null }];
  });
  return bodyTroubles({ runs }).some(({ key }) => key === 'too-far') ? [] : runs;
}
