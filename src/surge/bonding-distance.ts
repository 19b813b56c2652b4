import { notNegative } from './positive.ts';

/** Km, by what lies between: NFPA 780 (as on study cards). */
export const bondingMaterialFactor = { air: 1, solid: 0.5 } as const;

export type BondingMaterial = keyof typeof bondingMaterialFactor;

/**
 * Distance within which metal must be bonded to a down conductor beside it, metres: h / (6 n) Km, with h the height above the
 * nearest bond below, n = 1, 1.5, 2.25 for one, two, three and more down conductors near by. NFPA 780 (n and Km as on study
 * cards).
 */
export function bondingDistance(heightM: number, downConductors: number, between: BondingMaterial): number {
  const sixth = notNegative(heightM, 'height') / 6;
  return (sixth / conductorFactor(downConductors)) * bondingMaterialFactor[between];
}

/** The same beside a mast that stands alone, metres: h / 6. NFPA 780 (from memory). */
export function mastBondingDistance(heightM: number): number {
  return notNegative(heightM, 'height') / 6;
}

/** The same beneath an overhead wire, metres: l / (6 n), l along the wire to the nearest lead down. NFPA 780 (from memory). */
export function overheadBondingDistance(lengthM: number, downConductors: number): number {
  return notNegative(lengthM, 'length') / 6 / conductorFactor(downConductors);
}

function conductorFactor(downConductors: number): number {
  if (!Number.isInteger(downConductors) || downConductors < 1)
    throw new RangeError(`${downConductors} down conductors`);
  if (downConductors === 1) return 1;
  return downConductors === 2 ? 1.5 : 2.25;
}
