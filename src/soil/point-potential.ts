import type { SoilImages } from './layer-images.ts';
import { layerAt } from './layered-soil.ts';

/**
 * Potential against remote earth (volt per ampere) at a depth and a level distance from a point where the current enters the
 * soil. Depths in metres from 0 (surface) down; at the point itself it is infinite.
 */
export function pointPotential(images: SoilImages, sourceDepthM: number, depthM: number, distanceM: number): number {
  const set = images.between(layerAt(images.soil, sourceDepthM), layerAt(images.soil, depthM));
  let potential = 0;
  for (let k = 0; k < set.count; k++) {
    potential += set.strengthOhmM[k]! / Math.hypot(distanceM, depthM - set.offsetM[k]! - set.sign[k]! * sourceDepthM);
  }
  return potential;
}
