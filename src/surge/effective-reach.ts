import { notNegative, positive } from './positive.ts';

/**
 * Effective length of a buried wire with the soil breaking down about it, metres: 6.528 (rho tau)^0.379 / I^0.097, front in
 * us, peak in kA. J. He and others, IEEE Trans. Power Deliv. 20 (2005) (from memory). Several times the length without
 * breakdown by `effectiveLength`: another definition, the two are not to be mixed.
 */
export function ionisedEffectiveLength(resistivityOhmM: number, frontS: number, peakA: number): number {
  const reach = positive(resistivityOhmM, 'resistivity') * positive(frontS, 'front') * 1e6;
  return (6.528 * reach ** 0.379) / (positive(peakA, 'peak') / 1000) ** 0.097;
}

/** Where a grid is fed. */
export type GridFeed = 'centre' | 'corner';

/**
 * Radius of a square grid beyond which more of it lowers nothing, metres: k sqrt(rho T), T in us; k = 1.45 - 0.05 s fed at the
 * centre, 0.6 - 0.025 s at a corner, s the side of its meshes, metres. B. R. Gupta, B. Thapar, Proc. IEE 127C (1980) (from
 * memory). RangeError where the meshes are so wide that k vanishes: the formula does not reach there.
 */
export function gridEffectiveRadius(feed: GridFeed, resistivityOhmM: number, frontS: number, meshM: number): number {
  const mesh = notNegative(meshM, 'side of a mesh');
  const factor = feed === 'centre' ? 1.45 - 0.05 * mesh : 0.6 - 0.025 * mesh;
  if (factor <= 0) throw new RangeError(`meshes of ${meshM} m are too wide for the formula`);
  return factor * Math.sqrt(positive(resistivityOhmM, 'resistivity') * positive(frontS, 'front') * 1e6);
}
