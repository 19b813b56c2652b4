import type { Conductor, Electrode, Part, PointRef, Position, Site } from '../site/site.ts';
import type { SoilLayers } from '../soil/layers.ts';
import { ionisedEffectiveLength } from '../surge/effective-reach.ts';
import { type Interval, middle, scale } from '../units/interval.ts';
import { soilLayersOf } from './ground-soil.ts';
import { nearestPair, routeWay, siteWays, type Way } from './site-ways.ts';

/** The longest stretch of an open buried wire that a stroke has to run along from where it comes in. */
export interface BuriedArm {
  readonly electrode: string;
  /** null: nobody knows how long the wire is. */
  readonly armM: Interval | null;
  readonly depthM: Interval | null;
}

/** Of buried wires that do not close to a ring, and of radials, which are fed at their hub. Ids in order of the file. */
export function buriedArms(site: Site): readonly BuriedArm[] {
  const parts = new Map<string, Part>(
    [site.electrodes, site.conductors, site.supports, site.bars, site.equipment, site.arresters, site.antennas]
      .flat()
      .map((part) => [part.id, part]),
  );
  const wayOf = siteWays(site, (id) => parts.get(id));
  return site.electrodes.flatMap((e) => {
    const isOpen = (e.kind === 'buried wire' || e.kind === 'radial') && e.closed !== 'yes' && e.present !== 'no';
    return isOpen ? [{ electrode: e.id, armM: armOf(e, site.conductors, wayOf), depthM: e.depthM }] : [];
  });
}

type WayOf = (point: PointRef) => Way;

function armOf(e: Electrode, conductors: readonly Conductor[], wayOf: WayOf): Interval | null {
  const way = routeWay(e.route);
  const lengthM = e.lengthM ?? (way.length > 0 ? { low: wayM(way), high: wayM(way) } : null);
  if (lengthM === null || e.kind === 'radial') return lengthM;
  const landings = conductors.filter((c) => c.present !== 'no').flatMap((c) => landingsOn(c, e, way, wayOf));
  if (landings.length === 0) return lengthM;
  const known = landings.filter((at) => at !== null);
  // where nobody knows a landing, the best is that all of them share the wire out evenly
  if (known.length < landings.length) return { low: lengthM.low / (2 * landings.length), high: lengthM.high };
  const wholeM = way.length > 0 ? wayM(way) : (middle(lengthM) ?? lengthM.low);
  return wholeM === 0 ? lengthM : scale(lengthM, longest(known, wholeM) / wholeM);
}

/** From an end to the first landing, or half the way from one to the next. */
function longest(landingsM: readonly number[], wholeM: number): number {
  const sorted = [...landingsM].sort((a, b) => a - b);
  const between = sorted.slice(1).map((at, i) => (at - sorted[i]!) / 2);
  return Math.max(sorted[0]!, wholeM - sorted.at(-1)!, ...between);
}

/** Metres along the wire at which a conductor lands on it; null: nobody knows where. */
function landingsOn(c: Conductor, e: Electrode, way: Way, wayOf: WayOf): readonly (number | null)[] {
  const points = [c.from, ...c.passes.map((p) => p.at), c.to];
  return points.flatMap((point, i) => {
    if (point.part !== e.id) return [];
    if (point.atM !== null && point.mark === null) return [middle(point.atM)];
    const other = wayOf(points[i === 0 ? 1 : i - 1]!);
    return [way.length === 0 || other.length === 0 ? null : alongM(way, nearestPair(way, other)[0])];
  });
}

/** How far along a way a point of it lies. */
function alongM(way: Way, point: Position): number {
  let [best, bestM, doneM] = [Number.POSITIVE_INFINITY, 0, 0];
  for (const [i, end] of way.slice(1).entries()) {
    const start = way[i]!;
    const [lengthM, toM] = [apartM(start, end), apartM(start, point)];
    const off = toM + apartM(point, end) - lengthM;
    if (off < best) [best, bestM] = [off, doneM + toM];
    doneM += lengthM;
  }
  return bestM;
}

function wayM(way: Way): number {
  return way.slice(1).reduce((sum, end, i) => sum + apartM(way[i]!, end), 0);
}

function apartM(a: Position, b: Position): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** The median first negative stroke: a front of 1 us, 30 kA. */
const [frontS, peakA] = [1e-6, 30e3];
/** Soils from wet clay to dry rock, ohm metre: what is taken where nobody named one. */
const anySoilOhmM: Interval = { low: 10, high: 10_000 };

/**
 * Length of buried wire beyond which more of it lowers nothing in the front of a median stroke, by the longest of the published
 * definitions; over the range of the soil at its depth. `isKnown`: somebody named the soil.
 */
export function usefulLength(
  site: Site,
  depthM: Interval | null,
): { readonly usefulM: Interval; readonly isKnown: boolean } {
  const ohmM = resistivityAt(soilLayersOf(site), depthM?.high ?? 1);
  const of = (resistivity: number) => ionisedEffectiveLength(resistivity, frontS, peakA);
  const { low, high } = ohmM ?? anySoilOhmM;
  return { usefulM: { low: of(low), high: of(high) }, isKnown: ohmM !== null };
}

/** Of the layers down to a depth, the least and the greatest; null: no soil is known. */
function resistivityAt(layers: SoilLayers, depthM: number): Interval | null {
  let range: Interval | null = null;
  let topM = 0;
  for (const { resistivityOhmM: own, thicknessM } of layers) {
    if (range !== null && topM > depthM) return range;
    range = range === null ? own : { low: Math.min(range.low, own.low), high: Math.max(range.high, own.high) };
    topM += thicknessM?.low ?? Number.POSITIVE_INFINITY;
  }
  return range === null || !(range.low > 0) || !Number.isFinite(range.high) ? null : range;
}
