import type { LayeredSoil } from './layered-soil.ts';

/**
 * Reflection of a potential that varies as J0(lambda r) exp(-lambda z), for one wavenumber lambda (1/m), at every layer: `up`
 * at its upper boundary looking up, `down` at its lower boundary looking down, with all that lies beyond. Air reflects
 * fully (up[0] = 1) and nothing comes back from below the last layer (down[last] = 0). `between[i]` is
 * (rho_i+1 - rho_i) / (rho_i+1 + rho_i).
 *
 * Source: continuity of potential and of current density at each boundary; recursion of E. D. Sunde, Earth Conduction
 * Effects in Transmission Systems (1949), chapter 2 (from memory).
 */
export function reflections(soil: LayeredSoil, lambda: number): { readonly up: number[]; readonly down: number[] } {
  const { resistivityOhmM, thicknessM } = soil;
  const last = resistivityOhmM.length - 1;
  const up = new Array<number>(last + 1).fill(1);
  const down = new Array<number>(last + 1).fill(0);
  for (let i = last - 1; i >= 0; i--) {
    const beyond = i + 1 < last ? down[i + 1]! * Math.exp(-2 * lambda * thicknessM[i + 1]!) : 0;
    const at = boundary(resistivityOhmM[i]!, resistivityOhmM[i + 1]!);
    down[i] = (at + beyond) / (1 + at * beyond);
  }
  for (let i = 1; i <= last; i++) {
    const beyond = up[i - 1]! * Math.exp(-2 * lambda * thicknessM[i - 1]!);
    const at = boundary(resistivityOhmM[i]!, resistivityOhmM[i - 1]!);
    up[i] = (at + beyond) / (1 + at * beyond);
  }
  return { up, down };
}

/** Reflection at one boundary, coming from `here`. */
export function boundary(hereOhmM: number, beyondOhmM: number): number {
  return (beyondOhmM - hereOhmM) / (beyondOhmM + hereOhmM);
}
