/**
 * Vertical rods in uniform soil. All results are ohm per ohm metre of soil resistivity. The air is replaced by the mirror
 * image of the rod; the current leaves evenly along the length and the potential is averaged along it, which reads high.
 */

/** A vertical rod from `topM` to `topM + lengthM` below grade. */
export interface VerticalRod {
  readonly lengthM: number;
  readonly topM: number;
}

/**
 * A slender rod alone. With its top at grade this is (ln(8 L / d) - 1) / (2 pi L).
 * Range: L above 2 d. The true figure is 0.6 % (L = 500 d) to 1.3 % (L = 75 d) lower.
 *
 * Source: H. B. Dwight, "Calculation of resistances to ground", Trans. AIEE 55 (1936) 1319-1328; IEEE Std 142 (second-hand);
 * with the top below grade: the same integrals with the image moved away.
 */
export function slenderRod({ lengthM, topM }: VerticalRod, diameterM: number): number {
  const own = 2 * lengthM * (Math.log((4 * lengthM) / diameterM) - 1);
  const image = onLine(2 * (topM + lengthM)) - 2 * onLine(2 * topM + lengthM) + onLine(2 * topM);
  return (own + image) / (4 * Math.PI * lengthM * lengthM);
}

/**
 * Mutual resistance of two parallel vertical rods: what a current in one lifts the other by. At a distance of its own
 * radius: the rod alone, for any thickness. Range: any distance above 0; the true figure is 0.9 % (distance = length) to
 * 1.6 % (a fifth of that) lower.
 *
 * Source: closed sum of Dwight's series (1936), here for rods of any two lengths and depths.
 */
export function mutualOfRods(a: VerticalRod, b: VerticalRod, distanceM: number): number {
  const [aTop, aFoot] = [a.topM, a.topM + a.lengthM];
  const [bTop, bFoot] = [b.topM, b.topM + b.lengthM];
  if (distanceM > farFactor * Math.max(aFoot, bFoot)) return 1 / (2 * Math.PI * distanceM);
  const beside = (u: number): number => u * Math.asinh(u / distanceM) - Math.hypot(u, distanceM);
  const direct = beside(aFoot - bTop) - beside(aTop - bTop) - beside(aFoot - bFoot) + beside(aTop - bFoot);
  const image = beside(aFoot + bFoot) - beside(aFoot + bTop) - beside(aTop + bFoot) + beside(aTop + bTop);
  return (direct + image) / (4 * Math.PI * a.lengthM * b.lengthM);
}

/** From here on a rod is a point (to 1 in 10^7), and the closed form would lose digits. */
const farFactor = 1000;

/** Second integral of 1 / u, for rods on one line. */
function onLine(u: number): number {
  return u === 0 ? 0 : u * (Math.log(2 * u) - 1);
}
