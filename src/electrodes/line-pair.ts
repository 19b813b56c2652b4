import { gaussLegendre } from '../math/quadrature.ts';

/**
 * Mean of 1 / distance between the points of two straight lines, in 1/m. A line is eight numbers in an array from `at`:
 * middle (3), unit vector (3), length, and nothing. `widthSquaredM2` is what thickness adds to the square of every
 * distance (the field of an axis, felt on a surface): so a line with itself is finite.
 *
 * Parallel lines exactly (the double integral of 1 / sqrt(u^2 + d^2)); far ones by the second moments of both
 * (error below 2e-4 from four lengths on); others by Gauss-Legendre points on the shorter line and the exact potential of
 * the longer one.
 */
export function meanInverseDistance(
  dx: number,
  dy: number,
  dz: number,
  ax: number,
  ay: number,
  az: number,
  lengthA: number,
  bx: number,
  by: number,
  bz: number,
  lengthB: number,
  widthSquaredM2: number,
): number {
  const along = ax * bx + ay * by + az * bz;
  if (Math.abs(along) > parallel) {
    const shift = ax * dx + ay * dy + az * dz;
    const apart = Math.max(0, dx * dx + dy * dy + dz * dz - shift * shift) + widthSquaredM2;
    return parallelMean(shift, apart, lengthA, lengthB);
  }
  return lengthA <= lengthB
    ? pointsOnFirst(dx, dy, dz, ax, ay, az, lengthA, bx, by, bz, lengthB, widthSquaredM2)
    : pointsOnFirst(-dx, -dy, -dz, bx, by, bz, lengthB, ax, ay, az, lengthA, widthSquaredM2);
}

/** Cosine from which two lines count as parallel. */
const parallel = 1 - 1e-12;

/** Middles `shift` apart along both; `apart` is the square of the distance across. */
function parallelMean(shift: number, apart: number, lengthA: number, lengthB: number): number {
  const half = (lengthA + lengthB) / 2;
  const less = (lengthA - lengthB) / 2;
  const d = Math.sqrt(apart);
  const sum =
    ramp(shift + half, apart, d) -
    ramp(shift + less, apart, d) -
    ramp(shift - less, apart, d) +
    ramp(shift - half, apart, d);
  return sum / (lengthA * lengthB);
}

/** u asinh(u / d) - sqrt(u^2 + d^2): second integral of 1 / sqrt(u^2 + d^2). */
function ramp(u: number, apart: number, d: number): number {
  return u * Math.asinh(u / d) - Math.sqrt(u * u + apart);
}

const rule = gaussLegendre(8);

/** (dx, dy, dz) from the middle of b to the middle of a; points on a, potential of b: ln((p + q + l) / (p + q - l)) / l. */
function pointsOnFirst(
  dx: number,
  dy: number,
  dz: number,
  ax: number,
  ay: number,
  az: number,
  lengthA: number,
  bx: number,
  by: number,
  bz: number,
  lengthB: number,
  widthSquaredM2: number,
): number {
  const halfB = lengthB / 2;
  let sum = 0;
  for (let k = 0; k < rule.points.length; k++) {
    const t = (rule.points[k]! * lengthA) / 2;
    const x = dx + t * ax;
    const y = dy + t * ay;
    const z = dz + t * az;
    const shift = x * bx + y * by + z * bz;
    const apart = Math.max(0, x * x + y * y + z * z - shift * shift) + widthSquaredM2;
    const ends = Math.sqrt(apart + (shift + halfB) ** 2) + Math.sqrt(apart + (shift - halfB) ** 2);
    sum += rule.weights[k]! * Math.log((ends + lengthB) / (ends - lengthB));
  }
  return sum / (2 * lengthB);
}
