import { gaussLegendre } from '../math/quadrature.ts';
import type { PackedPieces } from './straight-piece.ts';

/**
 * Least Gauss points along each of two far pieces; 0: they are too near for that. `ratioA` is the distance from the middle of
 * the first to the nearest that the second may reach, over half the length of the first; `ratioB` likewise.
 *
 * n points along a piece err by at most about (pi / 2) (2 z)^(-2n) of the integral of 1 / distance for a source at z half
 * lengths from the middle (Gauss error by the ellipse through the source, P. J. Davis, P. Rabinowitz, Methods of Numerical
 * Integration, section 4.6; from memory): 1e-9 at the ratios below, the two pieces together.
 */
export function farOrder(ratioA: number, ratioB: number): number {
  const ratio = Math.min(ratioA, ratioB);
  if (ratio < leastRatio[0]!) return 0;
  for (let n = leastRatio.length - 1; n > 0; n--) if (ratio >= leastRatio[n]!) return mostPoints - n;
  return mostPoints;
}

const mostPoints = 5;
/** For 5, 4, 3, 2 points: (pi / 2) (2 z)^(-2n) = 5e-10. */
const leastRatio = [5, 4, 3, 2].map((n) => (Math.PI / 1e-9) ** (1 / (2 * n)) / 2);

const rules = [0, 1, 2, 3, 4, 5].map((n) => gaussLegendre(Math.max(1, n)));

/** Double integral of 1 / sqrt(distance^2 + thickness^2) along two far pieces, metres, by `order` Gauss points along each. */
export function farMutual(p: PackedPieces, i: number, j: number, order: number, thicknessSquaredM2: number): number {
  const { points, weights } = rules[order]!;
  const dx = p.x[i]! - p.x[j]!;
  const dy = p.y[i]! - p.y[j]!;
  const dz = p.z[i]! - p.z[j]!;
  let sum = 0;
  for (let k = 0; k < order; k++) {
    const s = p.halfM[i]! * points[k]!;
    const px = dx + s * p.ux[i]!;
    const py = dy + s * p.uy[i]!;
    const pz = dz + s * p.uz[i]!;
    let row = 0;
    for (let l = 0; l < order; l++) {
      const t = p.halfM[j]! * points[l]!;
      const x = px - t * p.ux[j]!;
      const y = py - t * p.uy[j]!;
      const z = pz - t * p.uz[j]!;
      row += weights[l]! / Math.sqrt(x * x + y * y + z * z + thicknessSquaredM2);
    }
    sum += weights[k]! * row;
  }
  return sum * p.halfM[i]! * p.halfM[j]!;
}
