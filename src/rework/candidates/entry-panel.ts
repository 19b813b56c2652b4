import type { StudyPart } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Work } from '../work.ts';
import { ownElectrodes } from './apart-groups.ts';
import { firstRods } from './first-rods.ts';
import { layConductor } from './lay-conductor.ts';
import { neededToLand } from './needed-first.ts';
import { each, newWork } from './new-work.ts';
import { typedPlace } from './owner-units.ts';
import { electrodesOfMasts, isAtService, mastsInto, newPanelSpot, standOffM } from './panel-spot.ts';
import { ownerOf, type Scene } from './scene.ts';
import { isOfBuilding } from './two-supplies.ts';
import { usualWire } from './usual-wire.ts';
import { isOnWall } from './wall-of-panel.ts';
import { type Spot, type WayToLay, wayFrom } from './way-to-lay.ts';

export interface Panel {
  readonly id: string;
  /** Id of the work that puts it up; null: it is there. */
  readonly work: string | null;
}

/**
 * The entry panel at a building: one that is there, else one to be put up. null: one is there of which nobody can tell whether
 * it hangs on this wall or on that of another building.
 */
export function panelFor(scene: Scene, building: string): Panel | null {
  const there = panelsOutside(scene).map((p) => ({ id: p.id, isHere: isOnWall(scene, p.id, building) }));
  const here = there.find((p) => p.isHere === true);
  if (here !== undefined) return { id: here.id, work: null };
  if (there.some((p) => p.isHere === null)) return null;
  const id = panelId(scene, building);
  return { id, work: `move-panel:${id}` };
}

/**
 * What a protector is bolted to at a building: its entry panel. Where only another building has one, a line that is no feed
 * line gets it at the bar or panel of its own supply, so that the station keeps one entry. null: nobody can tell.
 */
export function mountFor(scene: Scene, building: string, isFeed: boolean): Panel | null {
  const panel = panelFor(scene, building);
  const isElsewhere = scene.parts('bars').some((b) => b.kind === 'entry panel');
  if (panel === null || panel.work === null || isFeed || !isElsewhere) return panel;
  const bars = scene.parts('bars').filter((b) => isIntersystemBar(scene, b, building) || b.where === building);
  const boxes = scene.parts('equipment').filter((e) => /panel|meter/.test(e.kind) && e.where === building);
  const there = [...bars, ...boxes][0];
  return there === undefined ? panel : { id: there.id, work: null };
}

/** Works without which what is bolted to such a panel hangs on nothing. */
export function neededForPanel(scene: Scene, { id, work }: Panel): readonly string[] {
  return work === null ? neededToLand(scene, id) : [work];
}

/** Also that of the service where nothing tells on which wall it hangs; never one that hangs on another. */
function isIntersystemBar(scene: Scene, bar: StudyPart, building: string): boolean {
  return bar.kind === 'intersystem bonding termination' && isOnWall(scene, bar.id, building) !== false;
}

function panelsOutside(scene: Scene): readonly StudyPart[] {
  return scene.parts('bars').filter((b) => b.kind === 'entry panel' && (b.where ?? 'outside') === 'outside');
}

function panelId(scene: Scene, building: string): string {
  return scene.newId(scene.study.buildings.length > 1 ? `entry-panel-${building}` : 'entry-panel');
}

/** New panels that other works need, by their ids: at the wall by the service, elsewhere where lines arrive. */
export function neededPanels(scene: Scene, ids: readonly string[]): readonly Work[] {
  const buildings = [...scene.study.buildings.map((b) => b.id), 'inside', 'unknown'];
  const asked = buildings.flatMap((building) => {
    const panel = panelFor(scene, building);
    return panel === null ? [] : [{ building, ...panel }];
  });
  const wanted = asked.filter(({ work }) => work !== null && ids.includes(work));
  const once = wanted.filter(({ work }, i) => wanted.findIndex((other) => other.work === work) === i);
  return once.flatMap(({ id, building }) => putUp(scene, id, building));
}

function putUp(scene: Scene, id: string, building: string): readonly Work[] {
  const spot = newPanelSpot(scene, building);
  const to = nearestLanding(scene, panelLandings(scene, building), spot);
  const at = spot === null ? null : typedPlace(spot, scene.study.site.units);
  const fields: Record<string, ChangeValue> = {
    kind: 'entry panel',
    ...(at === null ? {} : { at }),
    where: 'outside',
    known: 'planned',
  };
  const bar: SiteChange = { is: 'add', section: 'bars', id, fields };
  // what there is stands on another supply: whose electrode it gets is for a person to say
  if (to === null) return scene.main === null ? [withOwnRod(scene, id, building, bar)] : [];
  const laid = layConductor(scene, {
    id: scene.newId(`bond-${id}`),
    from: id,
    to: to.point,
    duty: 'lead',
    way: to.way,
  });
  return [
    newWork({
      kind: 'move-panel',
      words: isAtService(scene, building) ? 'new-panel' : 'new-panel-away',
      subject: id,
      at: [id, ownerOf(to.point)],
      answers: [],
      changes: [bar],
      laid: [laid],
      needs: neededToLand(scene, to.point),
      materials: [each('entry panel')],
      values: { panel: id, to: to.point, wire: laid.wire, lengthM: laid.run.lengthM, building },
    }),
  ];
}

/** Where the file has no electrode at all the panel stands on a rod of its own. */
function withOwnRod(scene: Scene, id: string, building: string, bar: SiteChange): Work {
  const driven = firstRods(scene, id, id, null, standOffM);
  return newWork({
    kind: 'move-panel',
    words: 'new-panel',
    subject: id,
    at: [id],
    answers: [],
    changes: [bar, ...driven.flatMap((d) => d.changes)],
    materials: [each('entry panel'), ...driven.flatMap((d) => d.materials)],
    runs: driven.flatMap((d) => d.runs),
    values: { panel: id, to: `rod-${id}`, wire: usualWire(scene, 'in soil'), lengthM: null, building },
  });
}

/**
 * Electrodes, bars and the panel of the service's own group; in a building without the service the electrodes that lines come
 * from first, whether or not they are bonded yet.
 */
function panelLandings(scene: Scene, building: string): readonly string[] {
  const { main } = scene;
  if (main === null) return [];
  const bars = main.parts.filter((id) => scene.part(id)?.section === 'bars');
  const electrodes = ownElectrodes(scene, main);
  const service = main.parts.filter((id) => id === scene.study.site.service);
  const near = isAtService(scene, building) ? [] : electrodesOfMasts(scene, mastsInto(scene, building));
  const good = [...new Set([...near, ...electrodes, ...bars, ...service])];
  const all = good.length > 0 ? good : main.parts.slice(0, 1);
  return all.filter((id) => isOfBuilding(scene, building, id));
}

interface Landing {
  readonly point: string;
  readonly way: WayToLay | null;
}

function nearestLanding(scene: Scene, points: readonly string[], spot: Spot | null): Landing | null {
  const ways = points.flatMap((point): readonly Landing[] => {
    const way = spot === null ? null : wayFrom(scene, spot, point);
    return way === null ? [] : [{ point, way }];
  });
  if (ways.length > 0) return ways.reduce((best, w) => (w.way!.lengthM < best.way!.lengthM ? w : best));
  return points[0] === undefined ? null : { point: points[0], way: null };
}
