import { notNegative, positive } from './positive.ts';

/** What the metal of a conductor is like when a surge starts to heat it, taken as at 20 °C. */
export interface HeatedMetal {
  readonly resistivityOhmM: number;
  readonly temperatureCoefficientPerK: number;
  readonly densityKgPerM3: number;
  readonly specificHeatJPerKgK: number;
}

/**
 * Rise of temperature of a conductor by a surge, kelvin:
 *
 *     (1 / alpha) (exp(W/R alpha rho / (q^2 gamma c)) - 1)
 *
 * with W/R the action integral in joule per ohm, q the section in square metres. Adiabatic (no heat leaves), current spread
 * evenly over the section: a fast stroke in thick wire or in steel heats its skin more. Holds up to melting; beyond it the
 * figure only says how far beyond, Infinity included. IEC 62305-1:2010 annex D (from memory). RangeError for a section or
 * constant of nothing.
 */
export function temperatureRise(metal: HeatedMetal, areaM2: number, specificEnergyJPerOhm: number): number {
  const unhindered = notNegative(specificEnergyJPerOhm, 'action integral') * heatPerEnergy(metal, areaM2);
  const alpha = notNegative(metal.temperatureCoefficientPerK, 'temperature coefficient');
  return alpha === 0 ? unhindered : Math.expm1(alpha * unhindered) / alpha;
}

/**
 * The action integral, joule per ohm, that brings a conductor just to a rise, kelvin: the same formula the other way round.
 */
export function energyForRise(metal: HeatedMetal, areaM2: number, riseK: number): number {
  return coolestHeat(metal, notNegative(riseK, 'rise')) / heatPerEnergy(metal, areaM2);
}

/** The least section, square metres, that a surge does not heat by more than a rise above zero, kelvin. */
export function leastArea(metal: HeatedMetal, specificEnergyJPerOhm: number, riseK: number): number {
  const energy = notNegative(specificEnergyJPerOhm, 'action integral');
  return Math.sqrt((energy * heatPerEnergy(metal, 1)) / coolestHeat(metal, positive(riseK, 'rise')));
}

/** Kelvin per joule per ohm while the metal is as at the start. */
function heatPerEnergy(metal: HeatedMetal, areaM2: number): number {
  const heatCapacity = positive(metal.densityKgPerM3, 'density') * positive(metal.specificHeatJPerKgK, 'specific heat');
  return positive(metal.resistivityOhmM, 'resistivity') / (positive(areaM2, 'section') ** 2 * heatCapacity);
}

/** The rise that a metal whose resistance did not grow would have had. */
function coolestHeat({ temperatureCoefficientPerK: alpha }: HeatedMetal, riseK: number): number {
  return notNegative(alpha, 'temperature coefficient') === 0 ? riseK : Math.log1p(alpha * riseK) / alpha;
}
