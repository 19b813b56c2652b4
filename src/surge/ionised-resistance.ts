import { notNegative, positive } from './positive.ts';

/**
 * Field at which soil breaks down, volts per metre, as documents have it: 300 kV/m (A. M. Mousa, IEEE Trans. Power Deliv. 9,
 * 1994) to 400 (CIGRE TB 63), both from memory. The choice moves the onset by a third: it is always shown.
 */
export const breakdownField = { low: 300e3, high: 400e3 } as const;

/** Current at which the breakdown of the soil starts to tell, ampere: E0 rho / (2 pi R0^2). CIGRE TB 63 (from memory). */
export function ionisationCurrent(resistanceOhm: number, resistivityOhmM: number, fieldVPerM: number): number {
  const resistance = positive(resistanceOhm, 'resistance');
  return (
    (positive(fieldVPerM, 'field') * positive(resistivityOhmM, 'resistivity')) / (2 * Math.PI * resistance * resistance)
  );
}

/**
 * Resistance of a compact electrode (within some 30 m) at a current, ampere, with the soil broken down about it: R0 / sqrt(1 +
 * I / Ig), Ig by `ionisationCurrent`. CIGRE TB 63, IEEE Std 1243 (from memory).
 */
export function ionisedResistance(
  resistanceOhm: number,
  resistivityOhmM: number,
  fieldVPerM: number,
  currentA: number,
): number {
  const onset = ionisationCurrent(resistanceOhm, resistivityOhmM, fieldVPerM);
  return resistanceOhm / Math.sqrt(1 + notNegative(currentA, 'current') / onset);
}

/**
 * The same by similarity, from the electrode's greatest extent alone, metres: R s / rho = 0.26 (rho I / (E0 s^2))^-0.31, never
 * above its resistance without breakdown. A. V. Korsuncev, as in a book on lightning protection (example read). 0 A: as
 * without.
 */
export function ionisedResistanceBySize(
  resistanceOhm: number,
  resistivityOhmM: number,
  fieldVPerM: number,
  currentA: number,
  extentM: number,
): number {
  const whole = positive(resistanceOhm, 'resistance');
  const [rho, extent] = [positive(resistivityOhmM, 'resistivity'), positive(extentM, 'extent')];
  const strength = (rho * notNegative(currentA, 'current')) / (positive(fieldVPerM, 'field') * extent * extent);
  return strength === 0 ? whole : Math.min(whole, (0.26 * strength ** -0.31 * rho) / extent);
}
