import { positive } from './positive.ts';

/** Share of its own resistance that an electrode's impedance has: A = alpha l + beta beyond the effective length. */
interface ImpulseLine {
  readonly alphaPerM: number;
  readonly beta: number;
}

/**
 * The length of a buried wire or a rod beyond which more of it lowers nothing for a front of a duration, metres, fed at one
 * end, soil resistivity in ohm metre, front in seconds, no breakdown of the soil: (1 - beta) / alpha, alpha = 0.025 + exp(-0.82
 * (rho T1)^0.257), beta = 0.17 + exp(-0.22 (rho T1)^0.555), T1 in us. Never above 33.2 m; for rho T1 below 0.74 ohm m us the
 * fit has none, and 0 is the answer. L. Grcev, IEEE Trans. Power Deliv.
 * 24 (2009) 441 (abstract read, coefficients from memory). Other definitions give several times as much: see
 * `ionisedEffectiveLength`.
 */
export function effectiveLength(resistivityOhmM: number, frontS: number): number {
  const { alphaPerM, beta } = impulseLine(resistivityOhmM, frontS);
  return Math.max(0, (1 - beta) / alphaPerM);
}

/**
 * Conventional impedance (peak potential over peak current) of one electrode over its resistance: 1 up to the effective
 * length, growing with the length beyond it. Same source, same bounds; at the high side, since the soil does not break down.
 */
export function impulseCoefficient(lengthM: number, resistivityOhmM: number, frontS: number): number {
  const { alphaPerM, beta } = impulseLine(resistivityOhmM, frontS);
  return Math.max(1, alphaPerM * positive(lengthM, 'length') + beta);
}

function impulseLine(resistivityOhmM: number, frontS: number): ImpulseLine {
  const reach = positive(resistivityOhmM, 'resistivity') * positive(frontS, 'front') * 1e6;
  return { alphaPerM: 0.025 + Math.exp(-0.82 * reach ** 0.257), beta: 0.17 + Math.exp(-0.22 * reach ** 0.555) };
}
