import { ownElectrodes } from './apart-groups.ts';
import { besideWall } from './building-walls.ts';
import { ownerOf, type Scene } from './scene.ts';
import { apartM, type Spot, spotsOf } from './spots.ts';

/** A hand's breadth off the wall. */
export const standOffM = 0.3;

/** Whether the service is in a building, or nobody knows that it is in another one. */
export function isAtService(scene: Scene, building: string): boolean {
  const { buildings, site } = scene.study;
  const home = scene.part(site.service)?.where ?? null;
  return home === building || [home, building].some((where) => buildings.every((b) => b.id !== where));
}

/**
 * Where a new panel goes, a hand's breadth outside the wall: the place nearest to the service; in a building without it that
 * nearest to a mast that lines come from, else to an electrode. null: the place of none of them is known, or no wall.
 */
export function newPanelSpot(scene: Scene, building: string): Spot | null {
  const goals = isAtService(scene, building) ? [scene.study.site.service] : goalsAway(scene, building);
  const spots = goals.flatMap((id) => {
    return spotsOf(scene.part(id)).flatMap((goal) => {
      const spot = besideWall(scene, building, goal, standOffM);
      return spot === null ? [] : [{ spot, offM: apartM(spot, goal) }];
    });
  });
  return (
    spots.reduce<(typeof spots)[number] | null>((x, y) => (x === null || y.offM < x.offM ? y : x), null)?.spot ?? null
  );
}

function goalsAway(scene: Scene, building: string): readonly string[] {
  const hasPlace = (ids: readonly string[]) => ids.some((id) => spotsOf(scene.part(id)).length > 0);
  const masts = mastsInto(scene, building);
  const electrodes = scene.main === null ? [] : ownElectrodes(scene, scene.main);
  return [masts, electrodes].find(hasPlace) ?? [scene.study.site.service];
}

/** Supports that the lines into a building come from. */
export function mastsInto(scene: Scene, building: string): readonly string[] {
  const lines = scene.study.lines.filter((l) => l.crossings.some((c) => c.building === building));
  const met = lines.flatMap((l) => l.stops).map((s) => ownerOf(s.replace(/^(?:bond|bend) /, '')));
  const masts = met.flatMap((id) => [id, ownerOf(scene.part(id)?.on ?? '')]);
  return [...new Set(masts)].filter((id) => scene.part(id)?.section === 'supports');
}

/** Electrodes to which a wire of a mast leads at once, those of the supplier left out. */
export function electrodesOfMasts(scene: Scene, masts: readonly string[]): readonly string[] {
  const ends = scene.study.conductors.flatMap(({ from, to }) => {
    const [a, b] = [ownerOf(from), ownerOf(to)];
    return masts.includes(a) ? [to] : masts.includes(b) ? [from] : [];
  });
  return [...new Set(ends)].filter((point) => {
    const group = scene.groupOf(point);
    return group !== null && ownElectrodes(scene, group).some((e) => ownerOf(e) === ownerOf(point));
  });
}
