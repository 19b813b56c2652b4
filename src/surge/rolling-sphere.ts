import { notNegative, positive } from './positive.ts';

/**
 * Radius of the sphere for strokes of a peak, metres: 10 I^0.65, I in kA. IEC 62305-1:2010 annex A (from memory), which rounds
 * it to 20, 30, 45, 60 m.
 */
export function sphereRadius(peakA: number): number {
  return 10 * (positive(peakA, 'peak') / 1000) ** 0.65;
}

/**
 * How far from a vertical rod, metres, a point at a height of its own is still under the sphere: sqrt(h1 (2R - h1)) - sqrt(h2
 * (2R - h2)). What a rod has above the radius does not count; 0 where the point is as high as the rod. Geometry of the
 * method of IEC 62305-3 and NFPA 780.
 */
export function sphereReach(radiusM: number, rodHeightM: number, pointHeightM: number): number {
  const radius = positive(radiusM, 'radius');
  const rod = Math.min(positive(rodHeightM, 'height of the rod'), radius);
  const point = Math.min(notNegative(pointHeightM, 'height of the point'), radius);
  const arm = (height: number) => Math.sqrt(height * (2 * radius - height));
  return Math.max(0, arm(rod) - arm(point));
}

/**
 * How deep the sphere hangs between two rods of one height, metres below their tips: R - sqrt(R^2 - (d/2)^2). null where they
 * stand so far apart that it passes between. Same source.
 */
export function sphereSag(radiusM: number, spacingM: number): number | null {
  const [radius, half] = [positive(radiusM, 'radius'), notNegative(spacingM, 'spacing') / 2];
  return half >= radius ? null : radius - Math.sqrt((radius - half) * (radius + half));
}
