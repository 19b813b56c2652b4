import { areOnOneRoof, comesDownBy } from './foot-height.ts';
import { type GroundWay, ownerOf, type Scene } from './scene.ts';
import { apartM, type Spot, spotsOf } from './spots.ts';

export { apartM, type Spot, spotsOf } from './spots.ts';

/** Where metal between two points could run; null: the file does not say where one of them is, or there is no way. */
export interface WayToLay extends GroundWay {
  /** What it comes down beside, metres; null: nobody knows. Left out: both ends are at the ground. */
  readonly downM?: number | null;
}

/** In the ground, round buildings and away from gas; between things in one building straight. From a roof it comes down outside. */
export function wayToLay(scene: Scene, from: string, to: string): WayToLay | null {
  const straight = straightWay(scene, from, to);
  if (straight === null) return null;
  const isStraight = isInOneBuilding(scene, from, to) || areOnOneRoof(scene, from, to) || straight.lengthM < touchM;
  const way = isStraight ? straight : scene.route(from, to);
  const downM = comesDownBy(scene, from, to);
  return way === null || downM === undefined ? way : { ...way, downM };
}

/** The same from a place where nothing is yet: straight to what is indoors, else round the building. */
export function wayFrom(scene: Scene, spot: Spot, to: string): WayToLay | null {
  const part = scene.part(ownerOf(to));
  const ways = spotsOf(part).map((there): WayToLay => ({ routeM: [spot, there], lengthM: apartM(spot, there) }));
  if (ways.length === 0) return null;
  const straight = ways.reduce((best, way) => (way.lengthM < best.lengthM ? way : best));
  const isIndoors = part?.where != null && part.where !== 'outside';
  return isIndoors || straight.lengthM < touchM ? straight : scene.routeFrom(spot, to);
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
