import type { Scene } from './scene.ts';
import { apartM, type Spot } from './way-to-lay.ts';

interface Wall {
  readonly a: Spot;
  readonly b: Spot;
}

/** Walls of a building one after the other; [] where its corners are not known. */
function wallsOf(scene: Scene, building: string): readonly Wall[] {
  const corners = scene.study.buildings.find((b) => b.id === building)?.cornersM ?? [];
  const spots = corners.map(([east, north]): Spot => [east, north]);
  return spots.length < 3 ? [] : spots.map((a, i) => ({ a, b: spots[(i + 1) % spots.length]! }));
}

/** Metres to the nearest wall; null where nobody knows. */
export function wallM(scene: Scene, building: string, spot: Spot): number | null {
  const walls = wallsOf(scene, building);
  return walls.length === 0 ? null : Math.min(...walls.map((w) => apartM(spot, footOn(spot, w))));
}

export function isInside(scene: Scene, building: string, [east, north]: Spot): boolean {
  const crossed = wallsOf(scene, building).filter(({ a, b }) => {
    if (a[1] > north === b[1] > north) return false;
    return east < a[0] + ((north - a[1]) * (b[0] - a[0])) / (b[1] - a[1]);
  });
  return crossed.length % 2 === 1;
}

/** A place outside the wall that is nearest to a spot, so far off it; null where no wall is known. */
export function besideWall(scene: Scene, building: string, spot: Spot, offM: number): Spot | null {
  const walls = wallsOf(scene, building);
  if (walls.length === 0) return null;
  const feet = walls.map((w) => ({ w, foot: footOn(spot, w) }));
  const { w, foot } = feet.reduce((x, y) => (apartM(spot, y.foot) < apartM(spot, x.foot) ? y : x));
  const long = apartM(w.a, w.b);
  const [nE, nN] = [(w.b[1] - w.a[1]) / long, (w.a[0] - w.b[0]) / long];
  const side = (sign: number): Spot => [foot[0] + sign * offM * nE, foot[1] + sign * offM * nN];
  return isInside(scene, building, side(1)) ? side(-1) : side(1);
}

/** The place on a wall that is nearest to a spot. */
function footOn(spot: Spot, { a, b }: Wall): Spot {
  const [dE, dN] = [b[0] - a[0], b[1] - a[1]];
  const square = dE * dE + dN * dN;
  const along = square === 0 ? 0 : ((spot[0] - a[0]) * dE + (spot[1] - a[1]) * dN) / square;
  const share = Math.min(1, Math.max(0, along));
  return [a[0] + share * dE, a[1] + share * dN];
}
