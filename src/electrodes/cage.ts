/**
 * Diameter of the round bar that a tied reinforcing cage stands for: the geometric mean distance of four bars at the corners
 * of the beam, `coverM` of concrete round them, each from itself and from the others. More bars come nearer to the whole
 * section. A beam too slim for a cage has one bar.
 *
 * Source: geometric mean distance of parallel wires at one potential (J. C. Maxwell, Treatise, 691; from memory), derived.
 */
export function cageDiameterM(widthM: number, heightM: number, barDiameterM: number, coverM: number): number {
  const across = widthM - 2 * coverM - barDiameterM;
  const up = heightM - 2 * coverM - barDiameterM;
  if (across <= barDiameterM || up <= barDiameterM) return barDiameterM;
  const meanM = ((barDiameterM / 2) * across * up * Math.hypot(across, up)) ** 0.25;
  return Math.min(2 * meanM, across + barDiameterM, up + barDiameterM);
}
