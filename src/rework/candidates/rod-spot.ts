import { isInside, wallM } from './building-walls.ts';
import type { Scene } from './scene.ts';
import { apartM, type Spot, spotsOf } from './way-to-lay.ts';

/** Feet of a wall and what is loose beside it (MIL practice: 2 ft), metres. */
const fromWallM = 0.7;
/** Kept from buried pipes and cables until they are located; ours, metres. */
const fromPipeM = 1;
const directions = 16;

/**
 * A place for a rod at a distance from a spot: off walls and pipes, and as far as can be from other electrodes. null where
 * no direction is open.
 */
export function rodSpot(scene: Scene, beside: Spot, distanceM: number, taken: readonly Spot[] = []): Spot | null {
  const electrodes = [...scene.parts('electrodes').flatMap(spotsOf), ...taken];
  const around = Array.from({ length: directions }, (_, i): Spot => {
    const angle = (2 * Math.PI * i) / directions;
    return [beside[0] + distanceM * Math.cos(angle), beside[1] + distanceM * Math.sin(angle)];
  });
  const open = around.filter((spot) => isOpen(scene, spot));
  const apart = (spot: Spot) => Math.min(...electrodes.map((e) => apartM(e, spot)));
  // a centimetre is no reason to turn another way
  return open.reduce<Spot | null>((best, s) => (best === null || apart(s) > apart(best) + 0.01 ? s : best), null);
}

function isOpen(scene: Scene, spot: Spot): boolean {
  const buildings = scene.study.buildings.map((b) => b.id);
  if (buildings.some((id) => isInside(scene, id, spot) || (wallM(scene, id, spot) ?? Infinity) < fromWallM))
    return false;
  const pipes = scene.parts('metalwork').filter((m) => /pipe|pool|tank|cable/.test(m.kind));
  return pipes.every((p) => distanceToM(spotsOf(p), spot) >= fromPipeM);
}

function distanceToM(route: readonly Spot[], spot: Spot): number {
  const pieces = route.slice(1).map((b, i) => pieceM(spot, route[i]!, b));
  return Math.min(Infinity, ...route.map((r) => apartM(r, spot)), ...pieces);
}

function pieceM(spot: Spot, a: Spot, b: Spot): number {
  const [dE, dN] = [b[0] - a[0], b[1] - a[1]];
  const square = dE * dE + dN * dN;
  const along = square === 0 ? 0 : ((spot[0] - a[0]) * dE + (spot[1] - a[1]) * dN) / square;
  const share = Math.min(1, Math.max(0, along));
  return apartM(spot, [a[0] + share * dE, a[1] + share * dN]);
}
