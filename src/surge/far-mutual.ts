import { gaussLegendre } from '../math/quadrature.ts';
import type { PackedPieces } from './straight-piece.ts';

/**
 * Gauss points that a piece needs in the integral of 1 / distance with a far one; 0: too near for that. `ratio` is the
 * distance from its middle to the nearest that the other may reach, over half its length.
 *
 * n points err by at most about (pi / 2) (2 z)^(-2n) of the integral for a source at z half lengths from the middle (error by
 * the ellipse through the source, P. J. Davis, P. Rabinowitz, Methods of Numerical Integration, section 4.6; from memory). The
 * ratios below hold that under 5e-9 for each of the two pieces.
 */
export function farPoints(ratio: number): number {
  if (ratio > ratios[2]!) return 2;
  if (ratio > ratios[3]!) return 3;
  return ratio > ratios[4]! ? 4 : 0;
}

/** Place: number of points. */
const ratios = [0, 1, 2, 3, 4].map((n) => (Math.PI / 1e-8) ** (1 / (2 * n)) / 2);
const rules = [1, 1, 2, 3, 4].map((n) => gaussLegendre(n));

/**
 * Double integral of 1 / sqrt(distance^2 + thickness^2) along two far pieces, metres, by so many Gauss points along the first
 * and the second.
 */
export function farMutual(
  p: PackedPieces,
  i: number,
  j: number,
  pointsA: number,
  pointsB: number,
  thicknessSquaredM2: number,
): number {
  const a = rules[pointsA]!;
  const b = rules[pointsB]!;
  const dx = p.x[i]! - p.x[j]!;
  const dy = p.y[i]! - p.y[j]!;
  const dz = p.z[i]! - p.z[j]!;
  let sum = 0;
  for (let k = 0; k < pointsA; k++) {
    const s = p.halfM[i]! * a.points[k]!;
    const px = dx + s * p.ux[i]!;
    const py = dy + s * p.uy[i]!;
    const pz = dz + s * p.uz[i]!;
    let row = 0;
    for (let l = 0; l < pointsB; l++) {
      const t = p.halfM[j]! * b.points[l]!;
      const x = px - t * p.ux[j]!;
      const y = py - t * p.uy[j]!;
      const z = pz - t * p.uz[j]!;
      row += b.weights[l]! / Math.sqrt(x * x + y * y + z * z + thicknessSquaredM2);
    }
    sum += a.weights[k]! * row;
  }
  return sum * p.halfM[i]! * p.halfM[j]!;
}
