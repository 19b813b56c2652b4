import { positive } from './positive.ts';

/** mu0, henry per metre. */
export const mu0 = 4e-7 * Math.PI;

/**
 * Depth at which a current in thick metal has fallen to 1/e, metres: sqrt(rho / (pi f mu0 mur)); resistivity in ohm metre,
 * frequency in hertz. Any textbook of electromagnetics.
 */
export function skinDepth(resistivityOhmM: number, frequencyHz: number, relativePermeability = 1): number {
  const rho = positive(resistivityOhmM, 'resistivity');
  const mu = mu0 * positive(relativePermeability, 'relative permeability');
  return Math.sqrt(rho / (Math.PI * positive(frequencyHz, 'frequency') * mu));
}
