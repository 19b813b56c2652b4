/**
 * Buried plates in uniform soil, read as a round plate of the same area; ohm per ohm metre of soil resistivity. A square
 * has about 2 % less than the round plate.
 */

/** Radius of the round plate of the same area. */
export function plateRadiusM(widthM: number, heightM: number): number {
  return Math.sqrt((widthM * heightM) / Math.PI);
}

/**
 * A round plate at any depth and either way up, within 1.2 %.
 *
 * Source: BS 7430:2011, 9.5.2 (from memory).
 */
export function plate(radiusM: number, depthM: number): number {
  return (1 + radiusM / (2.5 * depthM + radiusM)) / (8 * radiusM);
}
