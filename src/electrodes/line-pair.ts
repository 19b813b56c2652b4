/**
 * Mean of 1 / distance between the points of two straight lines, in 1/m: (dx, dy, dz) leads from the middle of b to the
 * middle of a; a and b are unit vectors. `widthSquaredM2` is what thickness adds to the square of every distance (the field
 * of an axis, felt on a surface): so a line with itself is finite.
 *
 * Closed forms, exact to rounding: parallel lines by the double integral of 1 / sqrt(u^2 + d^2); others by that of two
 * straight lines in space, in which the width adds to their distance. Lines within 4e-6 of parallel: 1e-5 or better.
 *
 * Source: G. A. Campbell, Mutual inductances of circuits composed of straight wires, Phys. Rev. 5 (1915), as in F. W. Grover,
 * Inductance Calculations (1946), chapter 7 (from memory); held against a numerical double integral in its tests.
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
  // normal of both
  const nx = ay * bz - az * by;
  const ny = az * bx - ax * bz;
  const nz = ax * by - ay * bx;
  const sineSquared = nx * nx + ny * ny + nz * nz;
  const alongA = ax * dx + ay * dy + az * dz;
  if (sineSquared < parallel) {
    const apart = Math.max(0, dx * dx + dy * dy + dz * dz - alongA * alongA) + widthSquaredM2;
    return parallelMean(alongA, apart, lengthA, lengthB);
  }
  const alongB = bx * dx + by * dy + bz * dz;
  const cosine = ax * bx + ay * by + az * bz;
  const across = nx * dx + ny * dy + nz * dz;
  const apart = (across * across) / sineSquared + widthSquaredM2;
  // both ends of a and half of b, as vectors from the middle of b
  const [halfA, halfB] = [lengthA / 2, lengthB / 2];
  const [px, py, pz] = [dx + halfA * ax, dy + halfA * ay, dz + halfA * az];
  const [qx, qy, qz] = [dx - halfA * ax, dy - halfA * ay, dz - halfA * az];
  const [ux, uy, uz] = [halfB * bx, halfB * by, halfB * bz];
  return skewMean(
    (alongA - cosine * alongB) / sineSquared,
    (cosine * alongA - alongB) / sineSquared,
    lengthA,
    lengthB,
    reach(px - ux, py - uy, pz - uz, widthSquaredM2),
    reach(px + ux, py + uy, pz + uz, widthSquaredM2),
    reach(qx - ux, qy - uy, qz - uz, widthSquaredM2),
    reach(qx + ux, qy + uy, qz + uz, widthSquaredM2),
    cosine,
    sineSquared,
    apart,
  );
}

function reach(x: number, y: number, z: number, widthSquared: number): number {
  return Math.sqrt(x * x + y * y + z * z + widthSquared);
}

/**
 * Middles as places along each line from where the two come nearest to each other, the square of their distance there
 * (`apart`), and the distances of all ends: d10 is that of the far end of a from the near end of b.
 */
function skewMean(
  middleA: number,
  middleB: number,
  lengthA: number,
  lengthB: number,
  d11: number,
  d10: number,
  d01: number,
  d00: number,
  cosine: number,
  sineSquared: number,
  apart: number,
): number {
  const [a1, a0] = [middleA + lengthA / 2, middleA - lengthA / 2];
  const [b1, b0] = [middleB + lengthB / 2, middleB - lengthB / 2];
  const sides =
    a1 * seen(d11 + d10, lengthB) -
    a0 * seen(d01 + d00, lengthB) +
    b1 * seen(d11 + d01, lengthA) -
    b0 * seen(d10 + d00, lengthA);
  const level = apart * cosine;
  const scale = Math.sqrt(apart * sineSquared);
  const solid =
    Math.atan((level + a1 * b1 * sineSquared) / (scale * d11)) -
    Math.atan((level + a1 * b0 * sineSquared) / (scale * d10)) -
    Math.atan((level + a0 * b1 * sineSquared) / (scale * d01)) +
    Math.atan((level + a0 * b0 * sineSquared) / (scale * d00));
  return (sides - solid * Math.sqrt(apart / sineSquared)) / (lengthA * lengthB);
}

/** Square of the sine below which two lines count as parallel: there both forms are out by about 3e-6. */
const parallel = 1.6e-11;

/** Potential of an even line at a point: by the sum of the distances of its two ends. */
function seen(sum: number, length: number): number {
  return Math.log((sum + length) / (sum - length));
}

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
