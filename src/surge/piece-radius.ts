import { notNegative, positive } from './positive.ts';

/**
 * Radius of the thin tube that has the inductance of a flat strap, metres: exp(-3/2) (w + t), the strap's own geometric mean
 * distance for a current spread evenly over it. With it a straight piece gives F. E. Terman's 0.2 l [ln(2l / (w + t)) + 1/2 +
 * 0.2235 (w + t) / l] uH for lengths of several widths. A braid counts as a strap of its outer width.
 *
 * Source: E. B. Rosa, Bull. Bur. Stand. 4 (1908), geometric mean distance of a rectangle; Terman (1943), Grover (1946) (from
 * memory).
 */
export function strapRadius(widthM: number, thicknessM: number): number {
  return Math.exp(-1.5) * (positive(widthM, 'width') + notNegative(thicknessM, 'thickness'));
}

/**
 * Radius of the one thin tube that stands for legs, wires or down conductors side by side with equal shares of the current at
 * the corners of a regular figure, metres: (r d2 d3 ... dn)^(1/n), d the distances of one from all others. Three legs:
 * (r s^2)^(1/3) with the face s.
 *
 * Source: F. W. Grover, Inductance Calculations (1946), bundle rule (from memory).
 */
export function bundleRadius(count: number, sideM: number, ownRadiusM: number): number {
  if (!(Number.isInteger(count) && count > 0)) throw new RangeError(`a bundle of ${count}`);
  let product = positive(ownRadiusM, 'radius of one');
  const ringM = count > 1 ? positive(sideM, 'side') / (2 * Math.sin(Math.PI / count)) : 0;
  for (let k = 1; k < count; k++) product *= 2 * ringM * Math.sin((Math.PI * k) / count);
  return product ** (1 / count);
}
