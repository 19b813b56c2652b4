import { besselRatio } from '../math/bessel-ratio.ts';
import { positive } from './positive.ts';
import { mu0, skinDepth } from './skin-depth.ts';

/** Metal of a round wire: ohm metre; the permeability counts as constant, which for steel is the small-signal side. */
export interface WireMetal {
  readonly resistivityOhmM: number;
  readonly relativePermeability: number;
}

/** Series impedance of what lies inside the metal, for each metre. */
export interface InternalImpedance {
  readonly resistanceOhmPerM: number;
  readonly inductanceHPerM: number;
}

/**
 * Internal impedance of a round wire, for each metre, at a frequency in hertz:
 *
 *     Z' = k rho / (2 pi r) I0(k r) / I1(k r),   k = (1 + j) / skin depth
 *
 * R' and L' = X' / omega. At 0 Hz rho / (pi r^2) and mu / (8 pi). Straight wire, its return far away against its radius
 * (no proximity effect). Source: S. Ramo, J. R. Whinnery, T. Van Duzer, Fields and Waves in Communication Electronics, section
 * 4.5 (from memory); S. A. Schelkunoff, Bell Syst. Tech. J. 13 (1934).
 */
export function internalImpedance(metal: WireMetal, radiusM: number, frequencyHz: number): InternalImpedance {
  const resistance = metal.resistivityOhmM / (Math.PI * positive(radiusM, 'radius') ** 2);
  const inductance = (mu0 * positive(metal.relativePermeability, 'relative permeability')) / (8 * Math.PI);
  if (frequencyHz === 0) return { resistanceOhmPerM: resistance, inductanceHPerM: inductance };
  const depth = skinDepth(metal.resistivityOhmM, frequencyHz, metal.relativePermeability);
  const ratio = besselRatio((Math.SQRT2 * radiusM) / depth);
  return {
    resistanceOhmPerM: resistance * ratio.re,
    inductanceHPerM: (resistance * ratio.im) / (2 * Math.PI * frequencyHz),
  };
}
