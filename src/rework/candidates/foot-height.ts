import type { StudyPart } from '../../study/study.ts';
import { isInside, wallM } from './building-walls.ts';
import { typedHeight, typedPlace } from './owner-units.ts';
import { ownerOf, type Scene } from './scene.ts';
import { type Spot, spotsOf } from './spots.ts';

/** Supports that are on a building whatever height was typed. */
const onBuildings: readonly string[] = ['roof mast', 'building face'];
/** A foot lower than this stands on a plinth in the soil. Ours. */
const plinthM = 1;
/** So near to a wall a thing is on its building. Ours. */
const atWallM = 1;

/** A support whose foot is not in the soil: on a roof, on a wall, or high up. */
export function isUp(part: StudyPart | undefined): boolean {
  if (part?.section !== 'supports') return false;
  return onBuildings.includes(part.kind) || typedUpM(part) >= plinthM;
}

function typedUpM(part: StudyPart | undefined): number {
  return part?.positionM?.[2] ?? 0;
}

/** Height of a part above ground: as typed; of a foot that is up without one that of its building. null: nobody knows. */
function heightM(scene: Scene, part: StudyPart | undefined): number | null {
  const typed = typedUpM(part);
  if (typed > 0 || !isUp(part)) return typed;
  const building = scene.study.buildings.find((b) => b.id === buildingOf(scene, part));
  const high = building?.heightM?.high ?? Infinity;
  return Number.isFinite(high) ? high : null;
}

/** The building that a part is on, in or at: as typed, else by its place; without a place the only one. null: nobody knows. */
export function buildingOf(scene: Scene, part: StudyPart | undefined): string | null {
  const { buildings } = scene.study;
  const named = buildings.find((b) => b.id === part?.where || b.id === ownerOf(part?.on ?? ''));
  if (named !== undefined) return named.id;
  const [spot] = spotsOf(part);
  const [only, ...others] = buildings;
  if (spot === undefined || buildings.every((b) => b.cornersM.length === 0))
    return others.length === 0 ? (only?.id ?? null) : null;
  const at = buildings.filter((b) => isInside(scene, b.id, spot) || (wallM(scene, b.id, spot) ?? Infinity) <= atWallM);
  return at.length === 1 ? at[0]!.id : null;
}

/** Both on one building, at least one of them up on it: from one to the other it is not down to the ground. */
export function areOnOneRoof(scene: Scene, from: string, to: string): boolean {
  const [a, b] = [from, to].map((p) => scene.part(ownerOf(p)));
  return isUp(a) && isUp(b) && isOneBuilding(scene, a, b);
}

function isOneBuilding(scene: Scene, a: StudyPart | undefined, b: StudyPart | undefined): boolean {
  const building = buildingOf(scene, a);
  return building !== null && building === buildingOf(scene, b);
}

/**
 * What a lead between two points has to come down beside what a plan shows, metres. undefined: neither is up, and the slack of
 * its ends does; null: nobody knows how high one of them is.
 */
export function comesDownBy(scene: Scene, from: string, to: string): number | null | undefined {
  const [a, b] = [from, to].map((p) => scene.part(ownerOf(p)));
  if (!isUp(a) && !isUp(b)) return undefined;
  const [high, low] = [heightM(scene, a), heightM(scene, b)];
  if (high === null || low === null) return high === low && areOnOneRoof(scene, from, to) ? 0 : null;
  // what is in soil has the height of the ground there
  const isStraight = [a, b].some((p) => p?.section === 'electrodes') || isOneBuilding(scene, a, b);
  return isStraight ? Math.abs(high - low) : high + low;
}

/**
 * A way as it is typed: where one end is up at a height that is typed, and the other on the ground, with its heights: level to
 * the outside of the wall, and down there.
 */
export function typedWay(
  scene: Scene,
  from: string,
  to: string,
  routeM: readonly Spot[],
): readonly (readonly number[])[] {
  const { units } = scene.study.site;
  const [a, b] = [from, to].map((p) => scene.part(ownerOf(p)));
  if (isUp(b) && !isUp(a)) return [...typedWay(scene, to, from, [...routeM].reverse())].reverse();
  const upM = typedUpM(a);
  if (!isUp(a) || upM === 0 || typedUpM(b) > 0) return eachOnce(routeM.map((spot) => typedPlace(spot, units)));
  const downAt = scene.study.buildings.some((h) => isInside(scene, h.id, routeM[0]!)) ? 1 : 0;
  const high = typedHeight(upM, units);
  return eachOnce([
    ...routeM.slice(0, downAt + 1).map((spot) => [...typedPlace(spot, units), high]),
    ...routeM.slice(downAt).map((spot) => [...typedPlace(spot, units), 0]),
  ]);
}

/** Corners that are one place once they are rounded stand once. */
function eachOnce(places: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return places.filter((p, i) => i === 0 || p.join() !== places[i - 1]!.join());
}
