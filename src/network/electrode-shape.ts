import { cageDiameterM } from '../electrodes/cage.ts';
import type { ElectrodeShape, Figure, RodFigures } from '../electrodes/electrode.ts';
import type { Wire } from '../materials/wire.ts';
import type { Electrode, Position, RoutePoint } from '../site/site.ts';
import { exact, type Interval, middle, scale } from '../units/interval.ts';

/** A rod of unknown thickness is between 3/8 in and 1 in: resistance hardly depends on it. Common practice, no source. */
const anyRodDiameterM: Interval = { low: 0.0095, high: 0.0254 };
/** Concrete in moist soil, ohm metre: IEEE Std 80 and BS 7430, from memory. */
const moistConcreteOhmM: Interval = { low: 30, high: 90 };
/** Reinforcing bars of a footing, metres across. Common practice, no source. */
const barDiameterM: Interval = { low: 0.01, high: 0.025 };
/** Concrete round the bars of a footing, metres: EN 1992-1-1 4.4.1.3, on prepared ground to straight on soil, from memory. */
const coverM: Interval = { low: 0.04, high: 0.075 };
/** A wire on the ground or of unknown depth lies no deeper than this, metres. Common practice, no source. */
export const usualDepthM: Interval = { low: 0.1, high: 0.8 };

/** What stands in the soil, in the words of the electrodes room; null for a kind that no closed form describes. */
export function electrodeShape(e: Electrode): ElectrodeShape | null {
  const { topM, lengthM } = inSoil(e);
  const rod = { lengthM, diameterM: e.diameterM ?? anyRodDiameterM, topM, angleDeg: e.angleDeg };
  switch (e.kind) {
    case 'rod':
      return { kind: 'rod', ...rod };
    case 'rods':
      return rods(e, rod);
    case 'drilled rod':
      return {
        kind: 'drilled rod',
        ...rod,
        diameterM: e.diameterM ?? e.wire?.diameterM ?? anyRodDiameterM,
        holeDiameterM: e.holeM,
        backfillOhmM: e.backfillOhmM,
      };
    case 'well casing':
      return { kind: 'well casing', ...rod, diameterM: e.diameterM };
    case 'pipe':
    case 'water pipe':
      return { kind: 'pipe', lengthM: e.lengthM, diameterM: e.diameterM, depthM: e.depthM ?? usualDepthM };
    case 'buried wire':
      return {
        kind: e.closed === 'yes' ? 'ring' : 'wire',
        lengthM: runLength(e),
        radiusM: wireRadius(e.wire),
        depthM: e.depthM ?? usualDepthM,
      };
    case 'ring':
      return { kind: 'ring', lengthM: runLength(e), radiusM: wireRadius(e.wire), depthM: e.depthM ?? usualDepthM };
    case 'radial':
      return {
        kind: 'star',
        count: e.members,
        armLengthM: runLength(e),
        radiusM: wireRadius(e.wire),
        depthM: e.depthM ?? usualDepthM,
      };
    case 'plate':
      return { kind: 'plate', widthM: e.widthM, heightM: e.heightM, depthM: e.depthM, stands: e.stands };
    case 'concrete-encased':
      return encased(e, topM);
    case 'strap on rock':
      return { kind: 'surface strap', lengthM: runLength(e), widthM: e.wire?.widthM ?? null };
    default:
      return null;
  }
}

/** A head that stands out of the ground is no metal in the soil. */
function inSoil({ topM, lengthM, angleDeg }: Electrode): { readonly topM: Interval; readonly lengthM: Figure } {
  if (topM === null || topM.low >= 0) return { topM: topM ?? exact(0), lengthM };
  const slant = Math.cos((((angleDeg === null ? null : middle(angleDeg)) ?? 0) * Math.PI) / 180);
  const out = (above: number): number => Math.max(0, -above) / Math.max(slant, 0.1);
  const rest = { low: Math.max(0, topM.low), high: Math.max(0, topM.high) };
  if (lengthM === null) return { topM: rest, lengthM };
  return { topM: rest, lengthM: { low: lengthM.low - out(topM.low), high: lengthM.high - out(topM.high) } };
}

/** The wire that joins them lies where their tops are; one that is not insulated is metal in the soil too. */
function rods(e: Electrode, rod: RodFigures): ElectrodeShape {
  const isBare = e.wire !== null && e.wire.insulated !== 'yes';
  return {
    kind: 'rods',
    ...rod,
    count: e.members,
    layout: e.layout,
    spacingM: e.spacingM,
    radiusM: e.radiusM,
    joiningWire: isBare ? { radiusM: wireRadius(e.wire), depthM: null } : null,
  };
}

/** A beam as deep as it is high. */
function encased(e: Electrode, topM: Interval): ElectrodeShape {
  const heightM = e.heightM ?? e.depthM ?? e.widthM;
  return {
    kind: 'encased',
    lengthM: e.lengthM,
    widthM: e.widthM,
    heightM,
    topM,
    concreteOhmM: moistConcreteOhmM,
    coreDiameterM: core(e, heightM),
  };
}

/**
 * A tied cage is as thick as its bars round the section; one that is not tied is its bars alone, or the wire that was laid
 * in; of one that nobody looked at anything between.
 */
function core(e: Electrode, heightM: Figure): Interval {
  const alone = e.wire?.diameterM ?? barDiameterM;
  if (e.cage === 'not tied' || e.widthM === null || heightM === null) return alone;
  const least = cageDiameterM(e.widthM.low, heightM.low, barDiameterM.low, coverM.high);
  // no thicker than the slimmest beam that the figures allow
  const most = cageDiameterM(e.widthM.low, heightM.low, barDiameterM.high, coverM.low);
  const high = Math.max(alone.high, most);
  return { low: e.cage === 'tied' ? Math.max(alone.low, least) : alone.low, high };
}

/** A strap behaves as a round wire of radius (width + thickness) / 4 (H. B. Dwight, 1936, from memory). */
export function wireRadius(wire: Wire | null): Figure {
  if (wire === null) return null;
  if (wire.diameterM !== null) return scale(wire.diameterM, 0.5);
  if (wire.widthM === null) return null;
  const thicknessM = wire.thicknessM ?? exact(0);
  return { low: (wire.widthM.low + thicknessM.low) / 4, high: (wire.widthM.high + thicknessM.high) / 4 };
}

function runLength(e: Electrode): Figure {
  return e.lengthM ?? routeLength(e.route, e.kind === 'ring' || e.closed === 'yes');
}

/** Along a route all of whose points are known. */
function routeLength(route: readonly RoutePoint[] | null, closed: boolean): Figure {
  const points = (route ?? []).map((p) => p.position);
  if (points.length < 2 || points.some((p) => p === null)) return null;
  const known = points as readonly Position[];
  const run = closed ? [...known, known[0]!] : known;
  const lengths = run.slice(1).map((p, i) => Math.hypot(p[0] - run[i]![0], p[1] - run[i]![1], p[2] - run[i]![2]));
  return exact(lengths.reduce((sum, l) => sum + l, 0));
}
