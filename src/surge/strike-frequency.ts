import { notNegative, positive } from './positive.ts';

/** Cd, by where it stands: IEC 62305-2:2010 Table A.1 (from memory). */
export const locationFactor = {
  'among higher objects': 0.25,
  'among equals': 0.5,
  isolated: 1,
  'on a hilltop': 2,
} as const;

/**
 * Strikes a year to what has a collection area, square metres, where so many flashes a year strike a square kilometre: Ng Ad
 * Cd 1e-6. IEC 62305-2:2010 annex A (from memory). For tall masts see `tallObjectStrikes`.
 */
export function strikesPerYear(
  flashesPerKm2Year: number,
  areaM2: number,
  location: keyof typeof locationFactor,
): number {
  const density = notNegative(flashesPerKm2Year, 'flash density');
  return density * notNegative(areaM2, 'area') * locationFactor[location] * 1e-6;
}

/** Factors of a line: CI (aerial 1, buried 0.5), CE (by surroundings) and CT (1, through a transformer 0.2). */
export interface LineFactors {
  readonly installation: number;
  readonly environment: number;
  readonly type: number;
}

/** Strikes a year to a line so long, metres: 40 l Ng CI CE CT 1e-6. IEC 62305-2:2010 annex A (from memory). */
export function lineStrikesPerYear(flashesPerKm2Year: number, lengthM: number, factors: LineFactors): number {
  const area = 40 * notNegative(lengthM, 'length');
  const product =
    notNegative(factors.installation, 'CI') * notNegative(factors.environment, 'CE') * notNegative(factors.type, 'CT');
  return notNegative(flashesPerKm2Year, 'flash density') * area * product * 1e-6;
}

/** Strikes a year to a tall object of a height, metres: 24e-6 Ng H^2.05. A. J. Eriksson (from memory); up to some 100 m. */
export function tallObjectStrikes(flashesPerKm2Year: number, heightM: number): number {
  return 24e-6 * notNegative(flashesPerKm2Year, 'flash density') * positive(heightM, 'height') ** 2.05;
}
