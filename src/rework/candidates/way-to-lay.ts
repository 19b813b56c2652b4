import type { StudyPart } from '../../study/study.ts';
import { type GroundWay, ownerOf, type Scene } from './scene.ts';

export type Spot = readonly [number, number];

/** Where metal between two points could run; null: the file does not say where one of them is, or there is no way. */
export type WayToLay = GroundWay;

/** In the ground, round buildings and away from gas; between things in one building straight. */
export function wayToLay(scene: Scene, from: string, to: string): WayToLay | null {
  const straight = straightWay(scene, from, to);
  if (straight === null || isInOneBuilding(scene, from, to) || straight.lengthM < touchM) return straight;
  return scene.route(from, to);
}

/** What stands closer together than this is joined along the wall, and no ground is dug. */
const touchM = 1;

/** The straight way between the places at which two parts can be met. */
export function straightWay(scene: Scene, from: string, to: string): WayToLay | null {
  const a = spotsOf(scene.part(ownerOf(from)));
  const b = spotsOf(scene.part(ownerOf(to)));
  const ways = a.flatMap((p) => b.map((q): WayToLay => ({ routeM: [p, q], lengthM: apartM(p, q) })));
  return ways.length === 0 ? null : ways.reduce((best, way) => (way.lengthM < best.lengthM ? way : best));
}

/** Or from a box to the panel on the wall of its room. */
function isInOneBuilding(scene: Scene, from: string, to: string): boolean {
  const [a, b] = [from, to].map((point) => scene.part(ownerOf(point))?.where ?? null);
  const [one, other] = [from, to].map((point) => scene.part(ownerOf(point))?.section);
  const isThroughWall = [one, other].includes('equipment') && [one, other].includes('bars');
  return (a !== null && a !== 'outside' && a === b) || isThroughWall;
}

/** Places at which a part can be met: its own, and the points of its route. */
export function spotsOf(part: StudyPart | undefined): readonly Spot[] {
  if (part === undefined) return [];
  if (part.routeM.length > 0) return part.routeM.map(([east, north]) => [east, north]);
  return part.positionM === null ? [] : [[part.positionM[0], part.positionM[1]]];
}

export function apartM([aE, aN]: Spot, [bE, bN]: Spot): number {
  return Math.hypot(bE - aE, bN - aN);
}
