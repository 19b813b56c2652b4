import type { Complex } from '../math/bessel-ratio.ts';
import type { WireMetal } from './internal-impedance.ts';
import { notNegative, positive } from './positive.ts';
import { skinDepth } from './skin-depth.ts';

/**
 * Transfer impedance of a solid tube as a shield, ohm for each metre, at a frequency in hertz:
 *
 *     Zt = R0 k t / sinh(k t),   k = (1 + j) / skin depth
 *
 * with R0 its resistance for each metre and t its wall (metres), thin against its radius. Falls from R0 as the current keeps
 * to the outside, so in a surge R0 is the high side. Source: S. A. Schelkunoff, Bell Syst. Tech. J. 13 (1934), from memory.
 */
export function tubeTransferImpedance(
  resistanceOhmPerM: number,
  wallM: number,
  metal: WireMetal,
  frequencyHz: number,
): Complex {
  const own = notNegative(resistanceOhmPerM, 'resistance of the shield');
  const wall = positive(wallM, 'wall of the shield');
  if (frequencyHz === 0) return { re: own, im: 0 };
  const u = wall / skinDepth(metal.resistivityOhmM, frequencyHz, metal.relativePermeability);
  // 1 / sinh(u + j u), with e^-u taken out so that nothing overflows
  const fade = Math.exp(-u);
  const re = ((1 - fade * fade) / 2) * Math.cos(u);
  const im = ((1 + fade * fade) / 2) * Math.sin(u);
  const factor = (own * u * fade) / (re * re + im * im);
  return { re: factor * (re + im), im: factor * (re - im) };
}

/**
 * Transfer impedance of a braid, ohm for each metre: R0 + j omega Mt, Mt what leaks through its holes (henry for each metre).
 * Source: E. F. Vance, Coupling to Shielded Cables (1978), from memory.
 */
export function braidTransferImpedance(resistanceOhmPerM: number, leakageHPerM: number, frequencyHz: number): Complex {
  const omega = 2 * Math.PI * notNegative(frequencyHz, 'frequency');
  const leakage = notNegative(leakageHPerM, 'leakage of the braid');
  return { re: notNegative(resistanceOhmPerM, 'resistance of the shield'), im: omega * leakage };
}

/** A stretch of shield between two bonds, at one moment. */
export interface ShieldSpan {
  readonly lengthM: number;
  readonly resistanceOhmPerM: number;
  /** 0 for a solid tube. */
  readonly leakageHPerM: number;
  /** Current in this stretch and its slope, both positive the same way along the line. */
  readonly currentA: number;
  readonly slopeAPerS: number;
}

/**
 * Voltage from core to shield that the currents in a line's shield leave at its end, its other end's core tied to the shield
 * and no current in the core, volt: the sum over the stretches of l (R0 i + Mt di/dt). Exact for a braid in time; for a solid
 * tube the high side, since its inside sees the current later and less. Same sources.
 */
export function coreToShieldVolts(spans: readonly ShieldSpan[]): number {
  let volts = 0;
  for (const span of spans) {
    volts += span.lengthM * (span.resistanceOhmPerM * span.currentA + span.leakageHPerM * span.slopeAPerS);
  }
  return volts;
}
