/**
 * Straight and closed wires lying level in uniform soil. All results are ohm per ohm metre of soil resistivity, by even
 * leakage and average potential, with the mirror image for the air.
 */

/**
 * A straight wire. Range: length above 4 radii, any depth (at grade the image lies on the wire). The true figure is 0.4 to
 * 0.8 % lower.
 *
 * Source: H. B. Dwight, Trans. AIEE 55 (1936) 1319-1328 (from memory), the integral itself in place of his series.
 */
export function straightWire(lengthM: number, radiusM: number, depthM: number): number {
  const imageM = Math.max(2 * depthM, radiusM);
  return (selfPotential(lengthM, radiusM) + selfPotential(lengthM, imageM)) / (4 * Math.PI);
}

/**
 * A wire laid in a circle, by its length all the way round. Range: depth well below the diameter. Within 0.1 % of the true
 * figure for a circle; a square of the same length has 3.8 % more.
 *
 * Source: H. B. Dwight, 1936; engineer technical letter ETL 1110-9-10, equation 1-14 (read).
 */
export function ringWire(lengthM: number, radiusM: number, depthM: number): number {
  const acrossM = lengthM / Math.PI;
  const imageM = Math.max(2 * depthM, radiusM);
  const logs = Math.log((4 * acrossM) / radiusM) + Math.log((4 * acrossM) / imageM);
  return logs / (2 * Math.PI * Math.PI * acrossM);
}

/**
 * Radius of the round wire that does what a flat strip does. Range: thickness below an eighth of the width.
 *
 * Source: H. B. Dwight, 1936, buried strip (from memory).
 */
export function stripRadiusM(widthM: number, thicknessM: number): number {
  const shape = (widthM * widthM - Math.PI * widthM * thicknessM) / (2 * (widthM + thicknessM) ** 2);
  return widthM * Math.exp(-1 - shape);
}

/** Potential of an evenly charged line, averaged over a parallel line of the same length at the distance x. */
export function selfPotential(lengthM: number, x: number): number {
  const ratio = lengthM / x;
  return (2 / lengthM) * (Math.asinh(ratio) - Math.sqrt(1 + 1 / (ratio * ratio)) + 1 / ratio);
}
