import type { StudyPart } from '../../study/study.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Work } from '../work.ts';
import { landingsFor } from './landings.ts';
import { layConductor } from './lay-conductor.ts';
import { each, newWork } from './new-work.ts';
import { typedPlace } from './owner-units.ts';
import { ownerOf, type Scene } from './scene.ts';
import { apartM, type Spot, spotsOf, type WayToLay } from './way-to-lay.ts';

export interface Panel {
  readonly id: string;
  /** Id of the work that puts it up; null: it is there. */
  readonly work: string | null;
}

/** The entry panel at a building: one that is there, else one to be put up. */
export function panelFor(scene: Scene, building: string): Panel {
  const there = panelsAt(scene, building)[0];
  if (there !== undefined) return { id: there.id, work: null };
  const id = panelId(scene, building);
  return { id, work: `move-panel:${id}` };
}

/** Panels outside, those that stand nearest to the building first; where places are not known all of them. */
function panelsAt(scene: Scene, building: string): readonly StudyPart[] {
  const panels = scene.parts('bars').filter((b) => b.kind === 'entry panel' && (b.where ?? 'outside') === 'outside');
  const others = scene.study.buildings.filter((b) => b.id !== building);
  return panels.filter((p) => {
    const [spot] = spotsOf(p);
    const own = spot === undefined ? null : wallM(scene, building, spot);
    if (spot === undefined || own === null) return true;
    return others.every((o) => (wallM(scene, o.id, spot) ?? Infinity) >= own);
  });
}

function panelId(scene: Scene, building: string): string {
  return scene.newId(scene.study.buildings.length > 1 ? `entry-panel-${building}` : 'entry-panel');
}

/** A new panel at each building that a work asks one for: at the wall by the service, bonded to its system. */
export function panelWorks(scene: Scene, asked: readonly Work[]): readonly Work[] {
  const buildings = scene.study.buildings.map((b) => b.id);
  const all = buildings.length > 0 ? buildings : ['inside'];
  return all.flatMap((building) => {
    const { id, work } = panelFor(scene, building);
    const dependents = asked.filter((w) => w.needs.includes(work ?? ''));
    return work === null || dependents.length === 0 ? [] : putUp(scene, id, building);
  });
}

function putUp(scene: Scene, id: string, building: string): readonly Work[] {
  const { main, study } = scene;
  if (main === null) return [];
  const spot = spotBesideService(scene, building);
  const to = nearestLanding(scene, landingsFor(scene, main, main), spot);
  if (to === null) return [];
  const at = spot === null ? null : typedPlace(spot, study.site.units);
  const laid = layConductor(scene, {
    id: scene.newId(`bond-${id}`),
    from: id,
    to: to.point,
    duty: 'lead',
    way: to.way,
  });
  const fields: Record<string, ChangeValue> = {
    kind: 'entry panel',
    ...(at === null ? {} : { at }),
    where: 'outside',
    known: 'planned',
  };
  return [
    newWork({
      kind: 'move-panel',
      subject: id,
      at: [id, ownerOf(to.point)],
      answers: [],
      changes: [{ is: 'add', section: 'bars', id, fields }],
      laid: [laid],
      materials: [each('entry panel')],
      values: { panel: id, to: to.point, wire: laid.wire, lengthM: laid.run.lengthM, building },
    }),
  ];
}

interface Landing {
  readonly point: string;
  readonly way: WayToLay | null;
}

function nearestLanding(scene: Scene, points: readonly string[], spot: Spot | null): Landing | null {
  const ways = points.flatMap((point) =>
    (spot === null ? [] : spotsOf(scene.part(ownerOf(point)))).map((there): Landing => {
      return { point, way: { routeM: [spot!, there], lengthM: apartM(spot!, there) } };
    }),
  );
  if (ways.length > 0) return ways.reduce((best, w) => (w.way!.lengthM < best.way!.lengthM ? w : best));
  return points[0] === undefined ? null : { point: points[0], way: null };
}

/** A hand's breadth outside the wall, at the place on it that is nearest to the service; null where that is not known. */
function spotBesideService(scene: Scene, building: string): Spot | null {
  const [service] = spotsOf(scene.part(scene.study.site.service));
  const walls = wallsOf(scene, building);
  if (service === undefined || walls.length === 0) return null;
  const feet = walls.map((w) => ({ ...w, foot: footOn(service, w.a, w.b) }));
  const best = feet.reduce((x, y) => (apartM(service, y.foot) < apartM(service, x.foot) ? y : x));
  const { low, high } = best.range;
  const centre: Spot = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2];
  const away = apartM(centre, best.foot);
  const out = away > 0 ? standOffM / away : 0;
  return [best.foot[0] + (best.foot[0] - centre[0]) * out, best.foot[1] + (best.foot[1] - centre[1]) * out];
}

const standOffM = 0.3;

interface Wall {
  readonly a: Spot;
  readonly b: Spot;
  readonly range: { readonly low: Spot; readonly high: Spot };
}

function wallsOf(scene: Scene, building: string): readonly Wall[] {
  const corners = scene.study.buildings.find((b) => b.id === building)?.cornersM ?? [];
  const spots = corners.map(([east, north]): Spot => [east, north]);
  if (spots.length < 3) return [];
  const side = (pick: (...values: number[]) => number): Spot => [
    pick(...spots.map((s) => s[0])),
    pick(...spots.map((s) => s[1])),
  ];
  const range = { low: side(Math.min), high: side(Math.max) };
  return spots.map((a, i) => ({ a, b: spots[(i + 1) % spots.length]!, range }));
}

function wallM(scene: Scene, building: string, spot: Spot): number | null {
  const walls = wallsOf(scene, building);
  return walls.length === 0 ? null : Math.min(...walls.map((w) => apartM(spot, footOn(spot, w.a, w.b))));
}

/** The place on a wall that is nearest to a spot. */
function footOn(spot: Spot, a: Spot, b: Spot): Spot {
  const [dE, dN] = [b[0] - a[0], b[1] - a[1]];
  const square = dE * dE + dN * dN;
  const along = square === 0 ? 0 : ((spot[0] - a[0]) * dE + (spot[1] - a[1]) * dN) / square;
  const share = Math.min(1, Math.max(0, along));
  return [a[0] + share * dE, a[1] + share * dN];
}
