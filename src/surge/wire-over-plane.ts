import { notNegative, positive } from './positive.ts';

/** mu0 / 2 pi, henry per metre. */
const mu0Over2Pi = 2e-7;

/**
 * Inductance of a long level wire over a perfectly conducting plane, henry for each metre, without what lies inside the metal:
 * mu0 / (2 pi) ln(2 h / r); height of its axis and radius in metres, the height at least five radii. The image in the plane
 * carries the current back. Times the speed of light: its surge impedance, 60 ln(2 h / r) ohm.
 *
 * Source: F. W. Grover, Inductance Calculations (1946), from memory; an antenna handbook's formulas (read) for two of them.
 */
export function wireOverPlane(heightM: number, radiusM: number): number {
  return mu0Over2Pi * Math.log((2 * positive(heightM, 'height')) / positive(radiusM, 'radius'));
}

/**
 * Mutual inductance of two long level wires side by side over such a plane, henry for each metre: mu0 / (2 pi) ln(D' / D), from
 * the one to the image of the other and to the other itself. Same source.
 */
export function mutualOverPlane(firstHeightM: number, secondHeightM: number, levelM: number): number {
  const [first, second] = [positive(firstHeightM, 'height'), positive(secondHeightM, 'height')];
  const level = notNegative(levelM, 'level distance');
  const apart = positive(Math.hypot(level, first - second), 'distance of the wires');
  return mu0Over2Pi * Math.log(Math.hypot(level, first + second) / apart);
}
