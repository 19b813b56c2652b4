import type { Scene } from './scene.ts';
import { apartM, type Spot } from './spots.ts';

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

/** The building whose walls are nearest to a spot outside of all; null: the spot is inside one, or no wall is known. */
export function buildingAt(scene: Scene, spot: Spot): string | null {
  const { buildings } = scene.study;
  if (buildings.some((b) => isInside(scene, b.id, spot))) return null;
  const near = buildings.flatMap(({ id }) => {
    const offM = wallM(scene, id, spot);
    return offM === null ? [] : [{ id, offM }];
  });
  return near.reduce<(typeof near)[number] | null>((x, y) => (x === null || y.offM < x.offM ? y : x), null)?.id ?? null;
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

/** Metres round the walls of a building between the places on them that are nearest to two spots, the shorter way; null where no wall is known. */
export function roundWallM(scene: Scene, building: string, from: Spot, to: Spot): number | null {
  const walls = wallsOf(scene, building);
  if (walls.length === 0) return null;
  const [a, b] = [from, to].map((spot) => markOn(walls, spot));
  const wholeM = walls.reduce((sum, w) => sum + apartM(w.a, w.b), 0);
  const oneWayM = Math.abs(a! - b!);
  return Math.min(oneWayM, wholeM - oneWayM);
}

/** How far along the walls, from their first corner on, the place is that is nearest to a spot. */
function markOn(walls: readonly Wall[], spot: Spot): number {
  let beforeM = 0;
  let best = { offM: Infinity, markM: 0 };
  for (const w of walls) {
    const foot = footOn(spot, w);
    const offM = apartM(spot, foot);
    if (offM < best.offM) best = { offM, markM: beforeM + apartM(w.a, foot) };
    beforeM += apartM(w.a, w.b);
  }
  return best.markM;
}

/** Places so far from a spot along the wall that is nearest to it, on both sides of it; those past the end of the wall left out. */
export function alongWall(scene: Scene, building: string, spot: Spot, apart: number): readonly Spot[] {
  const walls = wallsOf(scene, building);
  if (walls.length === 0) return [];
  const w = walls.reduce((x, y) => (apartM(spot, footOn(spot, y)) < apartM(spot, footOn(spot, x)) ? y : x));
  const long = apartM(w.a, w.b);
  const [dE, dN] = [(w.b[0] - w.a[0]) / long, (w.b[1] - w.a[1]) / long];
  const atM = apartM(w.a, footOn(spot, w));
  const sides = [1, -1].filter((sign) => atM + sign * apart >= 0 && atM + sign * apart <= long);
  return sides.map((sign): Spot => [spot[0] + sign * apart * dE, spot[1] + sign * apart * dN]);
}

/** The place of a thing that is nearest to a spot: of one that is laid along a route the nearest on it; null: it has no place. */
export function nearestOn(route: readonly Spot[], spot: Spot): Spot | null {
  if (route.length < 2) return route[0] ?? null;
  const feet = route.slice(1).map((b, i) => footOn(spot, { a: route[i]!, b }));
  return feet.reduce((x, y) => (apartM(spot, y) < apartM(spot, x) ? y : x));
}

/** The place on a stretch that is nearest to a spot. */
function footOn(spot: Spot, { a, b }: Wall): Spot {
  const [dE, dN] = [b[0] - a[0], b[1] - a[1]];
  const square = dE * dE + dN * dN;
  const along = square === 0 ? 0 : ((spot[0] - a[0]) * dE + (spot[1] - a[1]) * dN) / square;
  const share = Math.min(1, Math.max(0, along));
  return [a[0] + share * dE, a[1] + share * dN];
}
