import { middle } from '../../units/interval.ts';
import { add, type Placed, type Step } from '../format/positions.ts';
import type { Located } from '../format/where.ts';
import { type Report, refuse } from '../reading/report.ts';
import type { TypedSite } from '../reading/typed-site.ts';
import type { PartBase, PointRef, Position, Where } from '../site.ts';
import { cornerOf } from './corner-of.ts';

/** Answers where typed places and positions are. */
export interface Places {
  readonly position: (placed: Placed | null) => Position | null;
  /** The named place that it is, if it is one. */
  readonly name: (placed: Placed | null) => string | null;
  readonly where: (typed: Located | null, placed: Placed | null, otherwise: Where) => Where;
  /** A distance from something whose side is not known: nearness only. */
  readonly near: (placed: Placed | null) => PartBase['near'];
  readonly corners: (building: string) => readonly Position[] | null;
}

/** Places may stand on one another this often in a row. */
const chainLimit = 100;

type Found = Position | null;

/** Works out positions as they are asked for, each once; places that stand on one another in a circle are noted. */
export function placesOf(site: TypedSite, report: Report): Places {
  const typed = placedById(site);
  const wheres = new Map(site.places.map((p) => [p.id, p.values.where]));
  const buildings = new Map(site.buildings.map((b) => [b.id, b.values.corners]));
  const corners = new Map<string, readonly Position[] | null>();
  const done = new Map<string, Found>();
  const position = (placed: Placed | null, trail: readonly string[]): Found => {
    if (placed === null) return null;
    if (placed.is === 'coordinates') return placed.position;
    if (placed.is === 'named') return ofPoint(placed.ref, trail);
    const from = ofPoint(placed.from, trail);
    const step = placed.is === 'steps' ? placed.step : asideStep(placed);
    return from === null || step === null ? null : add(from, step, 1);
  };
  const ofPoint = (ref: PointRef, trail: readonly string[]): Found => {
    const id = ref.part ?? '';
    if (buildings.has(id)) return cornerOf(cornersOf(id, trail), ref.member);
    const base = ofId(id, trail);
    const height = ref.mark === 'base' || ref.atM === null ? 0 : middle(ref.atM);
    return base === null || height === null ? null : add(base, [0, 0, height], 1);
  };
  const ofId = (id: string, trail: readonly string[]): Found => {
    const known = done.get(id);
    if (known !== undefined) return known;
    const here = typed.get(id);
    if (here === undefined) return null;
    if (trail.includes(id) || trail.length > chainLimit) {
      const circle = [...trail.slice(Math.max(0, trail.indexOf(id))), id];
      refuse(here.spot, here.at, trail.includes(id) ? 'place-circle' : 'place-chain', {
        circle: circle.slice(-8).join(' from '),
        limit: chainLimit,
      });
      done.set(id, null);
      return null;
    }
    const found = position(here.placed, [...trail, id]);
    done.set(id, found);
    return found;
  };
  const cornersOf = (id: string, trail: readonly string[]) => {
    const known = corners.get(id);
    if (known !== undefined) return known;
    corners.set(id, null);
    const all = (buildings.get(id) ?? []).map((corner) => position(corner, trail));
    const found = all.length > 0 && all.every((c) => c !== null) ? (all as Position[]) : null;
    corners.set(id, found);
    return found;
  };
  for (const id of typed.keys()) ofId(id, []);
  return {
    position: (placed) => position(placed, []),
    name: (placed) => (placed?.is === 'named' && wheres.has(placed.ref.part ?? '') ? placed.ref.part : null),
    where: (own, placed, otherwise) => {
      const place = placed?.is === 'named' ? (wheres.get(placed.ref.part ?? '') ?? null) : null;
      return whereOf(own ?? place, site, report) ?? otherwise;
    },
    near: (placed) => nearOf(placed),
    corners: (building) => cornersOf(building, []),
  };
}

function placedById(site: TypedSite) {
  const placed = Object.values(site.parts).flatMap((parts) =>
    parts.map((p) => ({ id: p.id, placed: p.values.at, spot: p.spot, at: p.at })),
  );
  const places = site.places.map((p) => ({ id: p.id, placed: p.values.at, spot: p.spot, at: p.at }));
  return new Map([...places, ...placed].map((p) => [p.id, p]));
}

function asideStep({ distanceM, side }: Extract<Placed, { is: 'aside' }>): Step | null {
  const distance = distanceM === null ? null : middle(distanceM);
  return distance === null || side === null ? null : add([0, 0, 0], side, distance);
}

function nearOf(placed: Placed | null): PartBase['near'] {
  if (placed?.is !== 'aside' || placed.from.part === null) return [];
  return [{ part: placed.from.part, distanceM: placed.distanceM }];
}

function whereOf(typed: Located | null, site: TypedSite, report: Report): Where {
  if (typed === null || typed.text !== 'inside') return typed?.text ?? null;
  const [first, second] = site.buildings;
  if (second === undefined) return first?.id ?? 'inside';
  const values = { buildings: site.buildings.map((b) => b.id).join(', ') };
  return refuse({ ...typed.spot, report }, typed.node.at, 'inside-which', values);
}
