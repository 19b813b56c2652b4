/** Dwight's series for plates well below grade (2.7 radii and more), against which the form in use is judged. */

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
