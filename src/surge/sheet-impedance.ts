import type { InternalImpedance, WireMetal } from './internal-impedance.ts';
import { positive } from './positive.ts';
import { mu0, skinDepth } from './skin-depth.ts';

/** Internal impedance of a thin-walled tube with its return outside, for each metre: radius outside and wall in metres. */
export function tubeImpedance(
  metal: WireMetal,
  radiusM: number,
  wallM: number,
  frequencyHz: number,
): InternalImpedance {
  const middleM = positive(radiusM, 'radius') - positive(wallM, 'wall') / 2;
  if (wallM > radiusM) throw new RangeError(`a wall of ${wallM} m in a tube of radius ${radiusM} m`);
  return sheetImpedance(metal, 2 * Math.PI * middleM, wallM, frequencyHz);
}

/**
 * Internal impedance of a flat strap, for each metre: current spread evenly over the width, both faces. Current crowds towards
 * the edges too, which raises the resistance of a wide one at high frequency by some half; that is left out.
 */
export function strapImpedance(
  metal: WireMetal,
  widthM: number,
  thicknessM: number,
  frequencyHz: number,
): InternalImpedance {
  return sheetImpedance(metal, 2 * positive(widthM, 'width'), positive(thicknessM, 'thickness') / 2, frequencyHz);
}

/**
 * Impedance for each metre of a sheet with the field on one face: k rho / p coth(k d), k = (1 + j) / skin depth, p the length of
 * that face across the current and d the thickness. At 0 Hz rho / (p d) and mu d / (3 p).
 *
 * Source: S. A. Schelkunoff, Bell Syst. Tech. J. 13 (1934); S. Ramo, J. R. Whinnery, T. Van Duzer, section 4.5 (from memory).
 */
function sheetImpedance(metal: WireMetal, acrossM: number, thickM: number, frequencyHz: number): InternalImpedance {
  const resistance = positive(metal.resistivityOhmM, 'resistivity') / (acrossM * thickM);
  const inductance = (mu0 * positive(metal.relativePermeability, 'relative permeability') * thickM) / (3 * acrossM);
  const slow = { resistanceOhmPerM: resistance, inductanceHPerM: inductance };
  if (frequencyHz === 0) return slow;
  const u = thickM / skinDepth(metal.resistivityOhmM, frequencyHz, metal.relativePermeability);
  if (u < 1e-3) return slow;
  // beyond twenty depths the far face feels nothing
  const [up, round] = u > 20 ? [1, 0] : hyperbolicParts(u);
  const omega = 2 * Math.PI * frequencyHz;
  return {
    resistanceOhmPerM: resistance * u * (up + round),
    inductanceHPerM: (resistance * u * (up - round)) / omega,
  };
}

/** Real part and less the imaginary part of coth(u + j u). */
function hyperbolicParts(u: number): readonly [number, number] {
  const below = 2 * (Math.sinh(u) ** 2 + Math.sin(u) ** 2);
  return [Math.sinh(2 * u) / below, Math.sin(2 * u) / below];
}
