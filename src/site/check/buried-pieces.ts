import type { Interval } from '../../units/interval.ts';
import type { Conductor, Electrode, Position, RoutePoint, Site, SourcePlace } from '../site.ts';

/** A straight piece of bare metal in the soil: level between two points, or upright at one. */
export interface BuriedPiece {
  readonly id: string;
  readonly section: 'electrodes' | 'conductors';
  readonly source: SourcePlace;
  /** East and north, metres. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Depths that it may be at or that it reaches over, metres. */
  readonly depthM: Interval;
  readonly radiusM: number;
}

/** Taken where a thickness is not known, metres. Common practice, no source. */
const usualRadiusM = 0.005;
const anyDepthM: Interval = { low: 0, high: 1 };
const upright: ReadonlySet<string> = new Set(['rod', 'well casing', 'drilled rod']);

/** Every piece whose place is typed: upright rods, and the routes of bare wires in the soil. Depths nobody typed are down to a metre. */
export function buriedPieces({ electrodes, conductors }: Site): readonly BuriedPiece[] {
  return [
    ...electrodes.filter((e) => e.present !== 'no').flatMap(piecesOfElectrode),
    ...conductors.filter((c) => c.present !== 'no').flatMap(piecesOfConductor),
  ];
}

function piecesOfElectrode(e: Electrode): readonly BuriedPiece[] {
  const { id, source, kind, position, lengthM, topM } = e;
  const radiusM = (e.diameterM ?? e.wire?.diameterM)?.low ?? 2 * usualRadiusM;
  const own = { id, section: 'electrodes', source, radiusM: radiusM / 2 } as const;
  if (upright.has(kind)) {
    if (position === null || lengthM === null || (e.angleDeg !== null && e.angleDeg.high > 0)) return [];
    const at = [position[0], position[1]] as const;
    const low = topM?.low ?? 0;
    return [{ ...own, from: at, to: at, depthM: { low, high: (topM?.high ?? 0) + lengthM.high } }];
  }
  if (kind !== 'buried wire' || e.wire?.insulated === 'yes') return [];
  return alongRoute(e.route, e.closed === 'yes', { ...own, depthM: e.depthM ?? anyDepthM });
}

function piecesOfConductor({ id, source, wire, buriedM, route, enclosure, runs }: Conductor): readonly BuriedPiece[] {
  const isBare = wire !== null && wire.insulated !== 'yes' && enclosure === null && runs !== 'in conduit';
  if (!isBare || buriedM === null || buriedM === 'no') return [];
  const radiusM = (wire.diameterM?.low ?? 2 * usualRadiusM) / 2;
  const depthM = buriedM === 'yes' ? anyDepthM : buriedM;
  return alongRoute(route, false, { id, section: 'conductors', source, radiusM, depthM });
}

function alongRoute(
  route: readonly RoutePoint[] | null,
  closed: boolean,
  own: Omit<BuriedPiece, 'from' | 'to'>,
): readonly BuriedPiece[] {
  const points = (route ?? []).map((p) => p.position);
  const run: readonly (Position | null)[] = closed ? [...points, points[0] ?? null] : points;
  return run.slice(1).flatMap((to, i) => {
    const from = run[i]!;
    if (from === null || to === null) return [];
    return [{ ...own, from: [from[0], from[1]] as const, to: [to[0], to[1]] as const }];
  });
}
