import { conductorLength } from '../bonding/span-figures.ts';
import type { Run, SoilPoint } from '../electrodes/body.ts';
import type { EnclosingSoils } from '../electrodes/solved-resistance.ts';
import type { Conductor, Part, PointRef, Site } from '../site/site.ts';
import { exact, type Interval, middle } from '../units/interval.ts';
import type { Certain } from './certain.ts';
import { usualDepthM, wireRadius } from './electrode-shape.ts';
import type { LeakingLine } from './leaking-line.ts';
import { lineLengthM, linePieces, pieceCount } from './line-pieces.ts';
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
  const ends = new Set(site.conductors.flatMap(landingsOf).map(({ part }) => part));
  return site.conductors
    .filter((c) => c.present !== 'no' && c.condition !== 'open' && c.wire !== null && c.wire.insulated !== 'yes')
    .flatMap((c) => {
      const depthM = depthOf(c);
      const radiusM = wireRadius(c.wire);
      if (depthM === null || radiusM === null) return [];
      const meets = landingsOf(c).flatMap(({ part }) => part ?? []);
      const own = { id: c.id, certain: certainOf(c), meets, lengthM: conductorLength(c), radiusM, depthM };
      // where other wires land on it, its spans are not known one by one
      const isTapped = ends.has(c.id) || c.splices.length > 0;
      return [{ ...own, spans: isTapped ? null : spansOf(c, own, wayOf, soils) }];
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

function spansOf(
  c: Conductor,
  own: Own,
  wayOf: (point: PointRef) => Way,
  soils: EnclosingSoils | null,
): readonly LeakingLine[] | null {
  if (middle(own.radiusM) === null) return null;
  const route = c.passes.length === 0 ? routeWay(c.route) : [];
  const ways = landingsOf(c).map(wayOf);
  if (route.length === 0 && ways.some((way) => way.length === 0)) return null;
  const spans =
    route.length > 0 ? [runsOf(route, own)] : ways.slice(1).map((to, i) => runsOf(nearestPair(ways[i]!, to), own));
  return spans.some((runs) => runs.length === 0) ? null : spans.map((runs, span) => lineOf(runs, own, span, soils));
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

/** [] where it is too short to be a body. */
function runsOf(way: Way, { depthM, radiusM }: Own): readonly Run[] {
  const thickM = middle(radiusM)!;
  const points = way.map(([east, north]): SoilPoint => [east, north, Math.max(middle(depthM)!, thickM)]);
  return points.slice(1).flatMap((to, i): readonly Run[] => {
    const from = points[i]!;
    const isStub = Math.hypot(to[0] - from[0], to[1] - from[1]) < 4 * thickM;
    return isStub ? [] : [{ from, to, radiusM: thickM, sheath: null }];
  });
}
