import { notNegative, positive } from './positive.ts';

/** mu0 / 2 pi, henry per metre. */
const mu0Over2Pi = 2e-7;

/**
 * Force between two parallel conductors of one length, newton: attracting where the currents run the same way (positive),
 * else parting (negative):
 *
 *     mu0 / (2 pi) i1 i2 (sqrt(l^2 + d^2) - d) / d
 *
 * thin against their distance. For long ones mu0 / (2 pi) i1 i2 l / d of IEC 62305-1:2010 annex D (from memory); the finite
 * length is the derivative of their mutual inductance (E. B. Rosa, Bull. Bur. Stand. 4, 1908). At the peaks it is the greatest.
 */
export function parallelForce(firstA: number, secondA: number, lengthM: number, spacingM: number): number {
  const spacing = positive(spacingM, 'spacing');
  const length = positive(lengthM, 'length');
  return mu0Over2Pi * current(firstA) * current(secondA) * ((Math.hypot(length, spacing) - spacing) / spacing);
}

/**
 * Push that two long parallel conductors with a like share of one current give each other over a whole stroke, newton second
 * per metre: mu0 / (2 pi) W/R / d, W/R of the current in each in joule per ohm. What moves is moved by this: a stroke is over
 * before a fixing has yielded. Same source.
 */
export function parallelImpulse(specificEnergyJPerOhm: number, spacingM: number): number {
  return (mu0Over2Pi * notNegative(specificEnergyJPerOhm, 'action integral')) / positive(spacingM, 'spacing');
}

/**
 * Force across one arm of a bend that tries to straighten it, newton, on the stretch from one distance to another along the
 * arm (metres from the corner; it begins outside the metal, at the wire's radius):
 *
 *     mu0 / (4 pi) i^2 cot(angle / 2) ln(to / from)
 *
 * with the included angle in radians (pi is straight: no force). The other arm counts as long, which is the high side. From
 * the field of a long straight current that ends at the corner (Biot and Savart); IEC 62305-1 annex D has the square corner.
 */
export function bendForce(currentA: number, includedAngleRad: number, fromM: number, toM: number): number {
  const start = positive(fromM, 'start of the arm');
  if (!(toM >= start && toM < Infinity)) throw new RangeError(`an arm from ${fromM} m to ${toM} m`);
  if (!(includedAngleRad > 0 && includedAngleRad <= Math.PI)) {
    throw new RangeError(`an included angle of ${includedAngleRad} rad`);
  }
  const opening = Math.max(0, 1 / Math.tan(includedAngleRad / 2));
  return (mu0Over2Pi / 2) * current(currentA) ** 2 * opening * Math.log(toM / start);
}

function current(ampere: number): number {
  if (!Number.isFinite(ampere)) throw new RangeError(`a current of ${ampere} A`);
  return ampere;
}
