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

/** Depth of the centre, in radii, from which Dwight's series for plates hold to 0.1 %. */
export const deepPlateRadii = 2.7;

/**
 * A round plate lying flat, well below grade.
 *
 * Source: H. B. Dwight, Trans. AIEE 55 (1936) 1319-1328 (from memory).
 */
export function deepFlatPlate(radiusM: number, depthM: number): number {
  const square = (radiusM / (2 * depthM)) ** 2;
  return 1 / (8 * radiusM) + (1 - (7 / 12) * square + (33 / 40) * square * square) / (8 * Math.PI * depthM);
}

/** The same standing on edge. Source as above. */
export function deepUprightPlate(radiusM: number, depthM: number): number {
  const square = (radiusM / (2 * depthM)) ** 2;
  return 1 / (8 * radiusM) + (1 + (7 / 24) * square + (99 / 320) * square * square) / (8 * Math.PI * depthM);
}
